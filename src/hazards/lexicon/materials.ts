/** Old materials whose dust hurts: asbestos, lead paint, silica. */

import type { Lexicon } from '../tables.ts';

export const ASBESTOS: Lexicon = {
  hazard: 'asbestos',
  classes: {
    /** Signs of asbestos in a layer, whatever the year; and words for resilient floors, their glues and backings. */
    LAYER_SIGN:
      'asbest* acm vat cutback~ cut_back~ asphalt* bitum* tar tarry coal_tar 9_x_9 9_by_9 nine_by_nine nine_x_nine 9_in 9_inch 9_inches nine_in nine_inch nine_inches 225_mm 226_mm 227_mm 228_mm 229_mm 225mm 228mm 229mm',
    LAYER_DARK: 'black blackish dark',
    LAYER_GLUE:
      'glue glues glued adhesive~ mastic~ back backs backed backing stuff goo gunk residue paste cement resin sticky underside felt paper layer',
    LAYER_RESILIENT:
      'viny* vini* vyny* vyni* lino* linel* resil* sheet~ sheeting vct pvc lvt lvp spc cushion_vinyl cushion_floor~ cushion_flooring cushioned_vinyl cushioned_floor~ cushioned_flooring roll_goods rubber* felt paper backed backing glue* gluing adhesiv* mastic* cement cemented plastic* stick sticky self_stick composition tile~ tiled tiling',
    SQUARE_FEET: 'sq sqft',
    SQUARES_DISTURBED: 'chip_up chipping_up chip_out chipping_out pry_up popping_up pull_up pulling_up knock_up',
    NINES: '9_x_9_s nine_by_nines 9_by_9_s',
    DUCTS: 'duct~ ducts heating_duct~ heating_pipe~ boiler_pipe~ boiler steam_pipe~ furnace_pipe~ pipe~ register',
    WRAPPED:
      'wrap wrapped wrapping lagging lagged insulation cardboard_paper white_tape white_cloth plaster_like paper_tape corrugated',
    CRUMBLES: 'crumbl* white gray grey flaking fraying old falling_off falling_apart dusty torn ripped cardboard',
    WRAP_ASKED:
      'safe touch test tested asbestos dangerous worry what_is cover box_in box_them remove cut rip basement old plaster leave',
    WRAP_NEW: 'foam new pex fiberglass sleeve buy heat_tape pipe_wrap_insulation',
    SPECKLED: 'speckled flecked mottled marbled streaky',
    SQUARES: 'square~ tile~',
    ASBESTOS:
      'asbestos asbestosis abestos asbestus asbesto acm chrysotile amosite tremolite crocidolite vermiculite transite amianto amiante asbest asbest_containing vinyl_asbestos asbestos_tile~',
    BLACK_GLUE: `black_mastic black_glue black_adhesive black_tar black_goo black_gunk black_sticky black_asphalt tar_like tarry asphalt_adhesive asphalt_glue asphalt_tile~ asphalt_mastic cutback cut_back_adhesive cut_back_glue cutback_adhesive coal_tar bituminous bitumen black_residue black_cutback black_stuff black_cement black_paste dark_mastic black_backing black_backed tar_paper_glue blackish_glue dark_glue dark_adhesive tar_glue mastic`,
    NINE: '9_x_9 9_by_9 nine_by_nine 9_in_x_9_in 9_inch_by_9_inch 9_x_9_in 9_in_by_9_in nine_x_nine 225_mm 228_mm 229_mm 23_cm',
    TILE: 'tile~ tiles square~ floor_tile~ vinyl tiled',
    POPCORN:
      'popcorn_ceiling~ popcorn_texture acoustic_ceiling cottage_cheese_ceiling textured_ceiling pipe_wrap pipe_lagging pipe_insulation duct_wrap boiler_insulation duct_tape_white insulation_around_the_pipe',
    DISTURB: `pull~ pulling rip~ ripped ripping tear~ tearing tore torn scrape~ scraper scraping scraped remove~ removing removed removal take_up taking_up took_up take_out took_out break~ breaking broke broken broken_up busted bust~ crack~ cracked cracking pop~ popping popped chip~ chipped chipping sand~ sanded sanding grind~ grinding ground_down ground
      drill~ drilled drilling screw~ screwing saw~ sawing sawed cut~ cutting hammer~ hammered hammering chisel~ lift~ lifting lifted pry~ prying pried peel~ peeled peeling demo~ demoed smash~ smashed crumbl* dust dusty vacuum~ vacuumed sweep~ swept sweeping floor_scraper heat_gun take_a_hammer took_a_hammer buff~ damaged jackhammer get_rid_of getting_rid_of get_up come_up coming_up came_up loose coming_loose dig~ tear_out flaking disturbed ripped_up nail~ scratching`,
    COVERS:
      'cover~ covering covered over go_over on_top lay_over laying_over float_over over_it over_top leave~ encapsulat* stay',
    OLD: `old older oldest original existing vintage ancient antique historic prewar postwar fifties sixties seventies forties thirties twenties from_before decades_old mid_century midcentury from_the_previous grandmas grandmothers grandparents retro 40_year_old 50_year_old 60_year_old 70_year_old 80_year_old forty_year_old fifty_year_old sixty_year_old years_old 1920s 1930s 1940s 1950s 1960s 1970s victorian edwardian georgian pre_war pre_wwii antebellum colonial_era turn_of_the_century grandparents_bought grandpa grandma century_old craftsman 100_year_old 90_year_old hundred_year_old`,
    RES: `vinyl lino linoleum sheet_vinyl vinyl_sheet sheet_flooring sheet_goods resilient vct vat vinyl_tile~ floor_tile~ asphalt_tile~ felt_backing felt_paper felt_backed felt_back paper_backing felt mastic backing_paper tile~ square~ vinyl_floor vinyl_flooring peel_and_stick_tile~ linolium linolum cushion_vinyl cushioned_vinyl cushion_floor roll_vinyl roll_flooring adhesive glue backing composition_tile~ kitchen_floor floor_covering parquet_glue tile_floor cork_tile_glue`,
    RES_SURE:
      'sheet_vinyl vinyl_sheet lino linoleum vct vat vinyl_tile~ sheet_flooring sheet_goods asphalt_tile~ felt_backing paper_backing felt_backed linolium cushion_vinyl cushioned_vinyl roll_vinyl resilient_tile~ resilient_floor vinyl_backing linoleum_backing vinyl_squares lino_tile~',
    /** What a floor may be made of when the year of the house is unknown. */
    RESILIENT_HERE: 'resilient vct vat lino linoleum mastic vinyl_tile~ vinyl_tiles',
    NOT_RES:
      'ceramic porcelain stone marble slate travertine carpet_tile~ ceiling_tile wall_tile backsplash roof shower glass mosaic subway lvp click laminate new style look looking spc rigid waterproof peel_off saltillo terracotta quarry hardwood_look quilt address delivery magazine',
    NEW_FLOOR: 'brand_new new_tile new_vinyl new_sheet newer recent recently',
    PROBE:
      'test~ tested testing sample~ lab kit inspector worry worried dangerous risk danger safe hazard year contain containing has may_have what_kind identify positive',
    DISTURBED:
      'sanded scraped broke ripped tore pulled vacuumed ground drilled cut_up smashed swept broken_up crumbled hammered chipped sawed already dust exposed exposure breathed chiseled demoed took_a_hammer removed_already busted shattered disturbed dusty disturbing crumbling',
    BLACKISH: 'black blackish dark tar tarry asphalt brownish_black',
    GLUEY: 'glue~ glued adhesive~ mastic~ gunk goo residue backing tacky sticky resin cement_glue stuff_stuck paste',
    NOT_BLACK_GLUE:
      'plank planks caulk caulking felt_pads duct roof tape new trim grout sealant color rug chair chairs baseboard',
    RES_COVER: 'vinyl lino linoleum sheet_vinyl vinyl_tile~ vct vat sheet_flooring resilient asphalt_tile~ mastic',
    LIES: 'found under below underneath beneath discovered uncovered revealed',
    WHAT_YEAR: 'what_year what_date when until cutoff decade how_old which_year years',
    NINE_INCH: 'nine_inch 9_inch 9_in',
    OLD_FLOOR:
      'old_floor~ floor_underneath original_floor kitchen_floor bathroom_floor flooring tile~ floor_tile~ layer_of_flooring layers_of_flooring',
    KNIFE: 'new lay laying install installing install',
    NINE_HERE:
      '9_x_9 9_by_9 nine_by_nine 9_in_x_9_in 9_inch_tile~ nine_inch_tile~ 9_in_tile~ 9_inch_by_9_inch 9_x_9_in 9_in_by_9_in',
    OLD_HERE:
      'old_vinyl existing_vinyl original_vinyl old_tile~ existing_tile~ original_tile~ old_sheet existing_sheet original_sheet old_resilient existing_resilient old_flooring existing_flooring original_flooring old_glue existing_glue original_glue old_adhesive existing_adhesive original_adhesive vinyl_tile~ old_linoleum',
    /** What may hold asbestos, by its name or its looks. */
    SUSPECT: `asbest* abestos vermiculite popcorn_ceiling~ popcorn_texture popcorn acoustic_ceiling textured_ceiling black_mastic black_glue black_adhesive black_tar cutback mastic 9_x_9 9_x_9_s 9_by_9 nine_by_nine nine_inch 9_inch linoleum lino old_mastic pipe_lagging pipe_insulation pipe_wrap vat transite cement_siding`,
    /** Dust that is in the air, and what blows it about. */
    AIRBORNE: `air_is_full air_full full_of_dust filled_with_dust air_is_thick ac a_c air_conditioner air_conditioning hvac central_air furnace furnace_blower blower blowers fan fans box_fan~ ceiling_fan ceiling_fans window_fan leaf_blower shop_vac shopvac vents return_vent return_air blowing blew blows in_the_air airborne hazy haze foggy fog cloud~ clouds cant_see thick every_room
      dust_everywhere dust_is_everywhere dust_went_everywhere dust_on_everything dust_is_on_everything dust_all_over blew_everywhere whole_house all_over_the throughout floating hanging_in breathing breathed breathe inhal* coughing choking smoky snowing raining`,
    RAISES: `sander~ floor_sander sand~ sanded sanding scrape~ scraped scraping grind~ grinding ground broke break~ breaking broken smash~ smashed smashing crumbl* crush~ crushed dust dusty chip~ chipped chipping chisel~ chiseling hammer~ hammered hammering tore tearing ripped ripping pulled pulling demo demoed demoing drill~ drilled drilling saw~ sawing sawed cut cutting
      sweep~ swept sweeping vacuum~ vacuumed vacuuming buff~ knocked_down came_down disturbed debris powder scraper jackhammer~ busted busting bust~ pry~ prying`,
    HERE_NOW:
      'right_there in_there standing_there sitting_there playing crawling asleep sleeping napping in_the_room in_the_next_room next_room right_here in_here watching around breathing breathed helping home inside upstairs in_the_house running_around walking_through walked_through came_in came_through ran_through running_through wandered is_in_the next_to_me everyone_is everybody_is eating coughing with_me nearby in_and_out',
    ANYBODY:
      'everyone everybody family wife husband mom grandma pregnant neighbors roommate we_are_all all_of_us me we us',
    KEPT_OUT:
      'kept_out keep_out stay_out staying_away away sealed_off outside grandmas grandparents kept_away out_of_the_house plastic_sheeting wet wetting',
    DRY_SWEEP:
      'dry_sweep~ dry_sweeping dry_swept sweep~ sweeping swept broom brooming shop_vac shopvac shop_vacuuming vacuuming',
    CRUMBS: 'crumb~ crumbs crumbl* crumbled pieces dust debris broken rubble bits chips powder mess',
    TESTED_OK: `tested_clear tested_negative tested_clean tested_ok tested_okay tested_fine tested_free test_negative test_clear test_clean test_was_negative test_is_negative test_was_clear test_came_back_negative test_came_back_clean test_came_back_clear came_back_negative came_back_clean came_back_clear comes_back_negative comes_back_clean results_negative results_were_negative results_are_negative result_was_negative result_negative
      results_clean results_clear tests_negative tests_were_negative tests_came_back_negative negative_test negative_result negative_lab negative_results lab_says_no lab_said_no lab_says_none lab_said_none lab_found_no lab_found_none none_detected no_asbestos_detected no_asbestos_found asbestos_negative negative_for_asbestos report_says_no report_says_clear report_is_clear report_was_clear lab_cleared inspector_cleared inspector_said_no inspector_says_no inspector_found_no
      test_says_no test_said_no test_shows_no test_showed_no tested_no_asbestos tested_non tested_as_clear tested_as_negative test_results_negative sample_was_negative samples_were_negative samples_came_back_negative samples_came_back_clean sample_came_back_negative sample_came_back_clean sample_came_back_clear samples_came_back_clear samples_were_clear lab_report_clear lab_report_negative negative_report clear_report clean_report tested_and_clear tested_and_clean tested_and_negative tested_it_negative lab_test_negative asbestos_test_negative asbestos_free_by_test cleared_by_the_lab all_clear_from_the_lab`,
    NOT_ASBESTOS:
      'no_asbestos not_asbestos isnt_asbestos asbestos_free free_of_asbestos aint_asbestos wasnt_asbestos no_abestos without_asbestos zero_asbestos arent_asbestos',
    BY_TEST: 'tested test results lab report sample sampled testing inspector inspection analysis',
    ABATED:
      'abated abatement_done asbestos_was_removed asbestos_is_removed asbestos_has_been_removed asbestos_removed_by abatement_company_removed abatement_is_done abatement_finished professionally_abated removed_by_abatement abatement_crew_removed abatement_contractor_removed',
  },
  rules: [
    {
      level: 'emergency',
      needs: 'SUSPECT RAISES AIRBORNE',
      within: 22,
      unless: 'NOT_RES KEPT_OUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'SUSPECT RAISES YOUNG HERE_NOW',
      within: 26,
      unless: 'KEPT_OUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'SUSPECT RAISES ANYBODY HERE_NOW',
      within: 26,
      unless: 'KEPT_OUT NOT_RES',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'SUSPECT DRY_SWEEP CRUMBS',
      within: 14,
      unless: 'NOT_RES KEPT_OUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    { level: 'stop', needs: 'NINES', about: 'asked' },
    { level: 'stop', needs: 'DUCTS WRAPPED CRUMBLES', within: 16, about: 'asked' },
    { level: 'stop', needs: 'DUCTS WRAPPED WRAP_ASKED', within: 14, unless: 'WRAP_NEW', about: 'asked' },
    { level: 'stop', needs: 'OLD_YEAR SQUARES', within: 22, unless: 'NOT_RES NEW_YEAR SQUARE_FEET', about: 'asked' },
    { level: 'stop', needs: 'OLD SQUARES_DISTURBED', within: 18, unless: 'NOT_RES NEW_YEAR', about: 'remove' },
    { level: 'stop', needs: 'SPECKLED SQUARES', within: 3, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'asked' },
    { level: 'stop', needs: 'ASBESTOS COVERS', within: 8, about: 'cover' },
    { level: 'stop', needs: 'ASBESTOS DISTURBED', within: 10, about: 'disturbed' },
    { level: 'stop', needs: 'ASBESTOS', about: 'asked' },
    { level: 'stop', needs: 'BLACK_GLUE', unless: 'NOT_BLACK_GLUE', about: 'asked' },
    { level: 'stop', needs: 'BLACKISH GLUEY', within: 4, ordered: true, unless: 'NOT_BLACK_GLUE', about: 'asked' },
    { level: 'stop', needs: 'GLUEY BLACKISH', within: 5, ordered: true, unless: 'NOT_BLACK_GLUE', about: 'asked' },
    { level: 'stop', needs: 'NINE TILE', within: 3, about: 'asked' },
    { level: 'stop', needs: 'NINE_INCH TILE', within: 7, about: 'asked' },
    { level: 'stop', needs: 'ASBESTOS WHAT_YEAR', within: 7, about: 'asked', undeniable: true },
    { level: 'stop', needs: 'POPCORN', about: 'asked' },
    { level: 'stop', needs: 'OLD_RES DISTURBED', within: 12, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'disturbed' },
    { level: 'stop', needs: 'OLD_RES DISTURB', within: 12, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'remove' },
    { level: 'stop', needs: 'OLD_COVERED COVERS', within: 10, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'cover' },
    { level: 'stop', needs: 'OLD_COVERED LIES', within: 8, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'asked' },
    { level: 'stop', needs: 'OLD_RES PROBE', within: 10, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'asked' },
    { level: 'stop', needs: 'OLD_YEAR RES', within: 20, unless: 'NOT_RES NEW_YEAR NEW_FLOOR', about: 'asked' },
    {
      level: 'stop',
      needs: 'RES_SURE DISTURB',
      within: 6,
      unless: 'NOT_RES NEW_YEAR NEW_FLOOR KNIFE',
      about: 'remove',
    },
    { level: 'stop', needs: 'OLD_YEAR DISTURB OLD_FLOOR', within: 24, unless: 'NOT_RES NEW_YEAR', about: 'remove' },
  ],
  joins: {
    OLD_RES: { needs: 'OLD RES', within: 4 },
    SUSPECT: { needs: 'OLD RES', within: 4 },
    OLD_COVERED: { needs: 'OLD RES_COVER', within: 3 },
    LAYER_DARK_GLUE: { needs: 'LAYER_DARK LAYER_GLUE', within: 2 },
    LAYER_GLUE_DARK: { needs: 'LAYER_GLUE LAYER_DARK', within: 4 },
  },
  lookalikes: `square_feet square_foot square_ft square_meters square_metres square_yard~ square_room square_cut square_edge~ square_corner~ framing_square square_up carpenter_square t_square set_square squared old_school old_fashioned old_english old_timer old_carpet old_baseboard old_trim over_the_phone leftover moreover over_budget cut_back_on cut_back_the cut_back_to cut_back_my black_mastic_sealant
    duct_mastic mastic_gun mastic_caulk black_sheet black_plank~ mastic_sealer square_one tile_saw tile_look wood_look_tile tile_cutter tile_shop tile_store tile_guy glue_gun hot_glue_gun wood_glue glue_bottle existing_baseboard existing_trim original_price original_plan original_question`,
  here: 'ASBESTOS BLACK_GLUE NINE_HERE OLD_HERE RESILIENT_HERE',
  clears: [
    { needs: 'TESTED_OK', tested: true, bare: true },
    { needs: 'NOT_ASBESTOS BY_TEST', within: 8, tested: true },
    { needs: 'BY_TEST NOT_ASBESTOS', within: 8, tested: true },
    { needs: 'ABATED' },
  ],
};

export const LEAD: Lexicon = {
  hazard: 'lead',
  classes: {
    PAINT_LAYERS: 'old_paint layers_of_paint layers_of_old_paint coats_of_paint original_paint',
    PAINT_AGED:
      'old_paint layers_of_paint layers_of_old_paint n_layers_of_old_paint coats_of_paint original_paint thick_paint many_layers layers old_varnish original_trim peeling peels flaking',
    LEAD_PAINT: `lead_paint lead_based lead_painted lead_dust lead_test~ lead_swab~ lead_poison* lead_abatement lead_safe lead_exposure lead_contamination lead_testing lead_chips lead_free lead_in_the_paint lead_in_paint lead_hazard lead_positive positive_for_lead contains_lead has_lead have_lead tested_for_lead test_for_lead lead_or_not is_it_lead lead_level~ lead_varnish lead_inspector lead_inspection exposed_to_lead
      lead_on_my lead_on_the_trim was_lead is_lead led_paint led_based_paint led_painted leaded_paint lead_pipe~ lead_solder lead_was_found lead_disclosure lead_removal lead_in_my lead_in_the found_lead lead_sanding sand_lead sanding_lead sanded_lead lead_cleanup lead_cleaning wipe_lead lead_paint_test lead_paint_on traces_of_lead lead_pant lead_pants lead_panit plomo bleifarbe`,
    LEAD: 'lead leaded',
    PAINTY: 'paint~ painted swab~ dust chips~ flakes kids toddler poisoning varnish',
    PAINT:
      'paint~ painted trim baseboard~ base_board~ jamb~ casing~ window~ window_sill~ windowsill~ sill~ door_casing door_trim door_frame~ molding~ moulding~ door~ stair_tread~ banister radiator woodwork wainscot~ spindles varnish skirting base riser~ stair_riser~ tread~ porch_floor banister~',
    SANDS:
      'sand~ sanded sanding scrape~ scraping scraped strip~ stripping heat_gun cut~ cutting pry~ prying pried saw~ sawing sawed grind~ burn~ chip~ chipped chipping flak* peel~ undercut~ undercutting dry_sand dry_sanded power_sand remove~ removing rip~ ripped pull~ pulling demo tear~ torch blast~ plane~ rout~ drill~ dust dangerous test~ worry safe lead torched repaint~ sander~ belt_sander orbital drum_sand drum_sanding hot_air_gun bare_wood scraper~ grinder',
    PAINT_OLD:
      'old_paint old_painted layers_of_paint old_trim_paint old_peeling_paint chipping_paint flaking_paint peeling_paint paint_chip~ paint_flake~ paint_dust old_lead many_coats_of_paint alligatored old_varnish alligatored_paint alligator_paint gator_skin gator_paint coats_of_paint peeling_all paint_is_peeling trim_is_peeling peeling_trim flaking_trim original_and_peeling',
    PAINT_WORK:
      'sand~ sanded sanding scrape~ scraping scraped strip~ stripping heat_gun grind~ chip~ everywhere vacuum~ ate eat~ eaten toddler kids baby chewing chewed dust burn~ torch falling falling_off carpet prying pry~ pried blast~ sweep~ pregnant mouth licking licked dry lead strip~ stripping hot_air_gun bare_wood sander~',
    LEAD_DUST: 'lead_dust lead_paint_dust paint_dust',
    WOOD_FLOOR:
      'oak_floor~ pine_floor~ fir_floor~ maple_floor~ hardwood~ wood_floor~ wooden_floor~ floorboard~ old_finish shellac',
    FLOOR_SANDED: 'sand~ sanded sanding sander~ drum_sander refinish refinishing',
    LEADED: `lead_paint lead_based lead_painted leaded_paint lead_dust lead_chips old_paint old_painted paint_dust peeling_paint flaking_paint layers_of_paint coats_of_paint lead_varnish`,
    SWAB: 'swab~ test_stick test_kit test_strip~',
    RED: 'red pink positive',
    CHILD: 'kid kids child toddler baby son daughter infant grandson granddaughter',
    CHEWS: 'chew~ chewed chewing ate eat~ eaten eating lick~ licking mouth swallowed',
    PAINTED: 'paint painted windowsill window_sill paint_chip~',
    LEAD_CORD: 'extension test_lead test_leads dog leash meter roof flashing swapped replaced plastic',
    LEAD_WAY: 'time hall door way wall row',
    PAINT_ONLY: 'paint painted_trim painted_wood painted_baseboard~ painted_window~ painted_door~ varnish',
    LEAD_CLEANED:
      'passed_clearance passed_the_clearance clearance_passed dust_wipes_passed dust_wipe_passed lead_dust_is_cleaned lead_dust_was_cleaned lead_dust_cleaned_up lead_contractor_cleaned lead_crew_cleaned',
    LEAD_CLEAR:
      'no_lead not_lead isnt_lead its_lead_free paint_is_lead_free trim_is_lead_free is_certified_lead_free negative_for_lead lead_negative lead_test_negative lead_test_was_negative lead_test_came_back_negative tested_negative_for_lead lead_tested_negative lead_paint_negative free_of_lead no_lead_found no_lead_detected lead_tested_clear lead_test_clear lead_test_is_negative negative_on_lead lead_was_negative lead_came_back_negative paint_tested_negative trim_tested_negative paint_tested_clear swab_was_negative swab_negative swab_came_back_negative tested_for_lead_negative',
    LEAD_RAISES: `sand~ sanded sanding sander~ belt_sander scrape~ scraped scraping strip~ stripped stripping grind~ grinding chip~ chipped chipping heat_gun torch~ burn~ burning blast~ plane~ saw~ sawing pry~ prying vacuum~ sweep~ sweeping swept broke breaking dust_from dust_off dust_is dust_was dust_of`,
  },
  rules: [
    {
      level: 'emergency',
      needs: 'LEAD_DUST AIRBORNE',
      within: 8,
      unless: 'KEPT_OUT NEW_YEAR',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'LEADED LEAD_RAISES AIRBORNE',
      within: 22,
      unless: 'KEPT_OUT NEW_YEAR',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'LEADED LEAD_RAISES YOUNG HERE_NOW',
      within: 26,
      unless: 'KEPT_OUT NEW_YEAR',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'LEAD_YEAR PAINT SANDS YOUNG HERE_NOW',
      within: 28,
      unless: 'KEPT_OUT NEW_YEAR',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'LEAD_YEAR PAINT RAISES AIRBORNE',
      within: 24,
      unless: 'KEPT_OUT NEW_YEAR',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    { level: 'note', needs: 'LEAD_YEAR PAINT_OLD', within: 22, unless: 'NEW_YEAR' },
    { level: 'note', needs: 'LEAD_YEAR PAINT_LAYERS', within: 22, unless: 'NEW_YEAR' },
    { level: 'note', needs: 'LEAD_YEAR PAINT_AGED PAINT', within: 22, unless: 'NEW_YEAR' },
    { level: 'note', needs: 'LEAD_PAINT', unless: 'LEAD_CORD' },
    { level: 'note', needs: 'LEAD PAINTY', within: 3, unless: 'LEAD_WAY' },
    { level: 'note', needs: 'LEAD_YEAR PAINT SANDS', within: 26, unless: 'NEW_YEAR' },
    { level: 'note', needs: 'LEAD_YEAR WOOD_FLOOR FLOOR_SANDED', within: 16, unless: 'NEW_YEAR' },
    { level: 'note', needs: 'PAINT_OLD PAINT_WORK', within: 8, unless: 'NEW_YEAR' },
    { level: 'note', needs: 'SWAB RED', within: 5 },
    { level: 'note', needs: 'CHILD CHEWS PAINTED', within: 10 },
    { level: 'note', needs: 'LEAD OLD PAINT', within: 9, unless: 'LEAD_WAY NEW_YEAR' },
    { level: 'note', needs: 'OLD PAINT_ONLY PAINT_WORK', within: 18, unless: 'NEW_YEAR' },
  ],
  joins: { LEADED: { needs: 'OLD PAINT', within: 4 } },
  lookalikes:
    'lead_time~ lead_me lead_to leads_to lead_wall lead_the lead_carpenter lead_installer lead_into lead_edge leading_edge lead_follow pencil_lead lead_pencil lead_up lead_in_time lead_on_this lead_story take_the_lead lead_a lead_an lead_from lead_out lead_us lead_generation lead_flashing_on_the_roof lead_hall a_lead_to lead_way sand_paper sandpaper paint_sample~ paint_color~ paint_colour~ paint_roller paint_can paint_store paint_brush~ paint_tray base_price data_base database base_coat red_oak red_tape red_wine red_rug',
  clears: [
    { needs: 'LEAD_CLEAR', tested: true },
    { needs: 'LEAD_CLEANED' },
    { needs: 'TESTED_OK LEAD', within: 8, tested: true },
    { needs: 'TESTED_OK', tested: true, bare: true },
  ],
};

export const SILICA: Lexicon = {
  hazard: 'silica',
  classes: {
    SCORE: 'score scored scoring snap snapped utility_knife shears',
    GRINDER: 'grinder~ angle_grinder diamond_cup cup_wheel cup_stone concrete_grinder diamond_wheel',
    HIGH: 'high_spot~ ridge~ hump~ slab concrete basement floor_flat lump~ thinset mortar screed',
    BOARD: 'cement_board backer_board backerboard cement_backer fiber_cement',
    CUT_IT: 'cut~ cutting cuttin saw~ sawing circ_saw circular_saw',
    CEMENTY:
      'concrete mortar thinset thin_set grout cement slab stone tile~ brick~ leveler leveller self_leveler self_leveling_compound levelling_compound leveling_compound patch_compound floor_patch patching_compound skim_coat screed backer_board cement_board backerboard stucco quartz granite masonry joint_compound drywall_mud terrazzo lightweight_concrete paver~ cinder_block',
    GRINDS:
      'grind~ grinding ground sand~ sanding sanded chiseling chiselling chiseled jackhammer~ scarif* shotblast~ dry_cut dry_cutting dry_cuts cutting_dry cut_dry rotary_hammer chipping hammer_drill dry_grind~ diamond_cup cup_wheel saw_cutting hammering demo_hammer demolition_hammer breaking_out busting_out busting_up chipping_out chiselling_out',
    DUSTY:
      'dust dusty cloud~ breathe~ breathing inhal* mask respirator n95 p100 sweep~ sweeping swept lungs cough~ airborne white_powder powder_everywhere powder_on_everything white_dust bandana t_shirt_over',
    SILICA:
      'cement_powder concrete_powder mortar_powder silica silicosis concrete_dust cement_dust thinset_dust mortar_dust grout_dust tile_dust crystalline stone_dust silica_dust drywall_dust leveler_dust brick_dust masonry_dust quartz_dust',
    DRY: 'dry no_mask without_a_mask without_mask indoors inside in_the_house in_my_house living_room no_water in_the_room',
    CUTS_TILE: 'cut~ cutting sawing grinding',
    NO_MASK:
      'no_mask without_a_mask without_mask need_a_mask wear_a_mask no_respirator without_a_respirator which_mask what_mask',
    THICK_AIR: `full_of_dust filled_with_dust air_is_full hazy haze foggy fog cant_see cannot_see couldnt_see white_cloud~ cloud_of dust_cloud~ clouds_of thick_with so_thick in_the_air breathing breathed coughing every_room whole_house all_over_the_house through_the_house choking zero_visibility blowing blew like_snow`,
    FOR_HOURS:
      'hours hour all_day all_morning all_afternoon all_week all_weekend since_lunch since_breakfast since_this_morning since_noon for_days whole_day two_days three_days',
    DRY_GRIND:
      'dry_grind~ dry_grinding dry_cut dry_cuts dry_cutting dry_sand~ dry_sanding grinding_dry cutting_dry cut_dry sanding_dry grind_dry dry_saw~',
    OUTDOORS: 'outside outdoors driveway yard porch',
    WET_CUT: 'wet_saw wet_cut wet_cutting wet_grind~ hepa shroud water_feed with_water',
    GRIND_ONLY:
      'grind grinds grinding ground grinder~ dry_grind~ dry_grinding sand_concrete sanding_concrete sand_the_slab polish_concrete scarify',
    NO_VAC:
      'dry without_a_vacuum without_vacuum without_a_vac without_vac no_vac no_vacuum no_shroud without_a_shroud no_dust_collection without_dust_collection without_dust_extraction no_dust_extractor need_a_vacuum need_a_vac need_a_shroud shroud hepa shop_vac without_water no_dust',
    DUST_DONE:
      'dust_is_gone cleaned_up_the_dust hepa_vacuumed dust_is_cleaned wet_mopped grinding_is_done done_grinding finished_grinding',
    SILICA_OTHER: 'gel wet_saw coffee stain paint color adhesive_only',
    MARKED_LINE: 'line mark lines marks pencil end joint behind',
  },
  rules: [
    {
      level: 'emergency',
      needs: 'CEMENTY GRINDS THICK_AIR',
      within: 20,
      unless: 'SILICA_OTHER OUTDOORS WET_CUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'CUT_IT CEMENTY THICK_AIR',
      within: 14,
      unless: 'SCORE OUTDOORS WET_CUT MARKED_LINE',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'CUT_IT BOARD THICK_AIR',
      within: 16,
      unless: 'SCORE OUTDOORS WET_CUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'SILICA THICK_AIR',
      within: 10,
      unless: 'SILICA_OTHER OUTDOORS',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'DRY_GRIND FOR_HOURS',
      within: 14,
      unless: 'OUTDOORS',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'CEMENTY GRINDS FOR_HOURS NO_MASK',
      within: 22,
      unless: 'OUTDOORS WET_CUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    {
      level: 'emergency',
      needs: 'CEMENTY GRINDS YOUNG HERE_NOW',
      within: 24,
      unless: 'OUTDOORS KEPT_OUT',
      unlessBefore: 'SUPPOSED',
      about: 'air',
    },
    { level: 'note', needs: 'GRIND_ONLY NO_VAC', within: 12, undeniable: true, unless: 'SILICA_OTHER' },
    { level: 'note', needs: 'GRINDER HIGH', within: 14, unless: 'SILICA_OTHER' },
    { level: 'note', needs: 'CUT_IT BOARD', within: 6, unless: 'SCORE' },
    { level: 'note', needs: 'SILICA', unless: 'SILICA_OTHER' },
    { level: 'note', needs: 'CEMENTY GRINDS', within: 6, unless: 'SILICA_OTHER' },
    { level: 'note', needs: 'CEMENTY DUSTY', within: 8, unless: 'SILICA_OTHER' },
    { level: 'note', needs: 'CEMENTY NO_MASK', within: 8, unless: 'SILICA_OTHER' },
    { level: 'note', needs: 'CUTS_TILE CEMENTY DRY', within: 8, unless: 'SILICA_OTHER' },
  ],
  lookalikes:
    'silica_gel tile_look stone_look concrete_look brick_look stone_color grind_coffee sanded_grout unsanded_grout sanded_caulk ground_floor ground_level on_the_ground above_ground ground_wire powder_room~ powder_coat~ powder_coated powder_blue face_mask_on mask_the masking paint_mask chip_brush tile_chip_color',
  clears: [{ needs: 'DUST_DONE' }],
};
