/** Running water, pipes in the way, and sewage. */

import type { Lexicon } from '../tables.ts';
import { SMELL_RISES } from './gas.ts';

export const WATER: Lexicon = {
  hazard: 'water',
  classes: {
    COMES_IN: 'comes_in coming_in gets_in getting_in seeps_in seeping_in leaks_in blows_in runs_in',
    WHEN_RAIN: 'rain~ rains raining door window wall basement roof slab storm~ chimney foundation',
    SOURCE: 'shower_pan pan valve pipe~ hose drain wax_ring ring supply_line leak roof flashing window faucet tank',
    INCH_DEEP: 'inch_on_the_floor inches_on_the_floor inch_of_it inches_deep inch_deep inch_on_the',
    WATERY: 'water water_heater washer dishwasher toilet pipe leak flood tank hose boiler',
    PIPE: `pipe~ piping plumbing water_line~ waterline~ water_main~ supply_line~ water_pipe~ water_supply copper_line~ copper_pipe pex pex_line~ sprinkler~ sprinkler_line hose~ washing_machine_hose radiator~ heating_tube~ radiant_tube~ heating_line~ radiant_line~ hydronic_line~ heat_tube~ tubing
      shutoff_valve shut_off_valve valve~ toilet_supply fridge_line icemaker_line ice_maker_line refrigerator_line toilet_line sink_line spigot riser~ water_tube hot_water_line cold_water_line baseboard_pipe heating_pipe~ radiator_pipe main_line drain_pipe~ drain_line~ water_heater~ water_softener hose_bib standpipe`,
    FIXTURE:
      'toilet~ dishwasher washing_machine washer fridge refrigerator icemaker ice_maker tub bathtub shower sink water_heater boiler aquarium waterbed radiator toilet_tank kitchen_sink bathroom_sink under_sink sink_cabinet loo wax_ring shower_pan',
    WATER: 'water waters',
    GUSH: `gush~ spray~ sprayed spraying pour~ pouring poured spurt~ squirt~ shoot~ shooting spew~ flooding rush~ rushing stream~ streaming cascad* pour_out everywhere coming_up coming_out coming_through coming_in running_down bubbling_up rising rise~ all_over squirted fountain geyser waterfall jet~ jetting erupt~ pumping blasting
      running_across dumping pooling_fast filling_up spreading fast_leak going_everywhere running_out flowing_out coming_down ankle_deep inch_deep inches_deep knee_deep raining gushed wont_stop wont_shut wont_turn_off seeping_up pissing peeing_out is_a_lake like_a_lake is_a_pond swimming_pool a_river niagara`,
    BURST:
      'burst~ bursted bursting bust busted rupture~ exploded explode~ blew blown_off blew_off blew_out snapped snap~ broke broken popped popped_off split split_open cracked_open let_go came_off came_apart came_loose sheared gave_way failed sprung spring_a_leak sprang_a_leak sprung_a_leak shot_off cracked froze_and frozen_and let_loose let_rip gave_out',
    LEAK_FAST: 'leaking dripping seeping trickl* weeping is_leaking keeps_leaking leaks_bad leaks_badly',
    CEILING: 'ceiling downstairs_neighbor neighbors_ceiling light_fixture ceiling_below apartment_below downstairs',
    FLOODED: 'flood flooded floods',
    FLOODING:
      'flooding is_flooded just_flooded flooded_now flooded_right_now flooded_out under_water underwater inundated',
    PLACE:
      'house basement room kitchen bathroom bath hall hallway floor~ apartment condo bedroom laundry closet garage living_room crawlspace crawl_space subfloor whole_floor carpet',
    CANT_STOP: `cant_find_the_shutoff cant_find_the_shut_off cant_find_the_valve cant_find_shutoff cant_find_the_main cant_turn_off_the_water cant_turn_the_water_off cant_shut_off_the_water cant_shut_the_water_off water_wont_shut_off water_wont_turn_off water_wont_stop shutoff_wont_turn shutoff_is_stuck shut_off_is_stuck
      valve_is_stuck valve_wont_turn valve_wont_close main_wont_close leaking_fast still_leaking_fast wheres_the_shutoff where_is_the_shutoff where_is_the_water_shutoff where_is_the_main_shutoff where_do_i_turn_the_water_off where_do_i_shut_off_the_water cant_stop_the_water cant_stop_the_leak wont_stop_leaking cant_find_water_shutoff shutoff_broke shutoff_valve_broke valve_broke`,
    LEAKS:
      'leak~ leaking leaky leaked leakage drip~ dripping water_damage water_leak~ slow_leak weep~ weeps weeping seeps seep~ drips',
    PLUMBERS: 'plumber~ plumbing_company landlord maintenance handyman restoration_company',
    WATER_FIXED:
      'fixed repaired replaced mended stopped_the_leak fixed_the_leak sorted capped fixed_it patched soldered sealed made_the_repair',
    LEAK_GONE:
      'leak_fixed leak_is_fixed leak_was_fixed leak_has_been_fixed leak_got_fixed leak_repaired leak_is_repaired leak_was_repaired leak_stopped_and_dried pipe_fixed pipe_is_fixed pipe_was_fixed pipe_repaired pipe_was_repaired pipe_is_repaired pipe_was_replaced pipe_has_been_fixed pipe_has_been_replaced fixed_the_pipe fixed_the_leak repaired_the_leak repaired_the_pipe valve_was_replaced hose_was_replaced replaced_the_hose replaced_the_pipe replaced_the_valve',
    AROUND_PIPE:
      'around hole_for holes_for for_the for_a for_my near beside past next_to to_fit to_clear plank~ escutcheon notch notched diameter trim collar flange pole cover chase sleeve for_pipe for_pipes insulation insulate wrap bender cutter thread gap size',
    LEAK_OTHER:
      'leveler leveller compound proof proofing resistant test detector detectors alarm sensor budget pan money caulk air gas light warranty memory information',
    MARKET: 'market options cheap memories sunlight light lights lamp zone insurance plain photos requests emails',
    PLANNED:
      'flange remove_the reset plank~ around install installing new_toilet before_flooring height trim caulk gap under_the_toilet which_way overflow_planks moldings shoe pull_the',
    /** Nothing runs: it is asked for later, or of a valve in general. */
    DROVE_IN:
      'screw~ screwed nail~ nailed cut~ cutting drill~ drilled drilling saw~ sawed sawing jigsaw jig_saw multitool multi_tool oscillating_tool staple~ stapled brad~ chisel~ pop popped hiss hissing nicked hit spike chipping hammer~',
    IT_POURS:
      'its_pouring it_is_pouring it_started_pouring started_pouring began_pouring pouring_through pouring_out pouring_from pouring_down pouring_into its_spraying it_is_spraying it_started_spraying started_spraying began_spraying spraying_me spraying_out spraying_everywhere spraying_up spraying_from spraying_all spraying_in_my spraying_into spraying_the_whole sprayed_me gushing gushes gushed raining_in_the_kitchen raining_in_the_basement raining_in_the_bathroom raining_in_the_bedroom raining_in_the_living_room raining_in_the_room raining_in_the_dining raining_in_the_hall raining_in_the_hallway raining_in_the_garage raining_in_the_house raining_in_the_apartment raining_in_the_unit raining_in_the_room_below raining_in_the_laundry raining_in_my raining_in_our raining_down raining_through raining_into raining_on_me raining_from squirting squirts spurting geyser shooting_up shooting_out jetting coming_out_fast flooding_the running_through_the_ceiling dripping_through_the_ceiling coming_through_the_ceiling soaking_everything streaming_down streaming_out',
    POURS_OTHER:
      'dust sawdust chips spark sparks blood money cash light_pouring light_is_pouring light_coming sun sunlight texture paint paint_sprayer adhesive foam bag bucket screws_pouring grit',
    VALVE_ANY:
      'valve~ shutoff~ shut_off~ stop_valve~ stopcock stop_cock gate_valve~ angle_stop~ supply_stop stop_under stops_under stop_behind stops_behind water_main_handle',
    VALVE_STIFF:
      'stiff stuck seized frozen hard_to_turn hard_to_close wont_budge doesnt_budge old ancient crusty corroded force forcing wrench pliers cheater original brittle tight_to_turn 60s 70s 50s penetrating_oil wont_turn not_turning barely_turns',
    VALVE_OTHER:
      'gas air vacuum expansion tire radiator bleeder old_house old_vinyl old_carpet old_floor old_flooring old_tile',
    CALM: 'usually normally typically supposed before_i before_we replace replacing usual in_general planning next_week for_later should_be',
    SHUTOFF: `shutoff~ shut_off_valve~ shutoff_valve~ angle_stop~ stop_valve~ supply_valve~ water_valve~ isolation_valve~ stop_cock stopcock shut_off_the_water shut_the_water_off turn_off_the_water turn_the_water_off shutting_off_the_water turning_off_the_water water_off water_shut_off water_turned_off shut_off_water turn_off_water`,
    SHUTOFF_ASKED:
      'where wheres find located location do_i_need do_i_have should_i should_we must_i usually stuck wont_turn wont_close wont_budge doesnt_turn seized frozen stiff corroded old replace replacing broken plastic_handle handle_broke rusty behind_the_wall accessible access_panel buried behind_drywall',
    PINHOLE:
      'pinhole~ pin_hole~ pin_sized_hole tiny_hole little_hole small_leak tiny_leak green_spot~ corroded corrosion',
    PIPES_ANY: 'pipe~ copper pex water_line~ line lines supply_line~ tubing plumbing radiator hose',
    SUPPLY_VALVE:
      'valve~ supply_line~ supply_hose angle_stop~ shutoff~ hose_bib water_line~ fitting~ compression_fitting',
    DAMP: 'damp wet moist drip~ weep~ weeps weeping sweat~ sweating crusty corroded seep~ beads bead',
    FIXED_SAID: 'fixed repaired replaced',
    PAINT_SAID: 'paint painting texture',
    CRAWL: 'crawl crawlspace yard gutter sump pit driveway',
    MARKS: 'stain stains spot spots mark marks',
    BULGE: 'bulging bulge sagging_with bubbling swollen sagging drooping bowing falling_down coming_down',
    WATER_HIT:
      'hit_water hit_a_water hit_the_water struck_water nailed_a_water screwed_a_water drilled_into_water punctured_a_water cut_a_water cut_the_water_line water_is_coming water_coming water_started water_shooting water_squirting water_spurting water_everywhere water_all_over water_spraying water_gushing water_pouring water_leaking water_running_out water_wont_stop water_flowing water_rushing water_dripping',
    STANDING_WATER:
      'standing_water inches_of_water inch_of_water feet_of_water foot_of_water knee_deep_in_water ankle_deep_in_water lake_in_my full_of_water filling_with_water',
    LEAK_SAID:
      'leak leaks leaking leaked water_leak roof_leak slow_leak leaky_pipe leaky_roof leaky_toilet leaking_toilet leaking_window',
    FIXED_BY: 'fixed_by repaired_by replaced_by mended_by sorted_by looked_at_and_fixed_by',
    POUR_OTHER:
      'leveler leveller self_leveling concrete mix mixing bucket bag bags powder into_the_bucket epoxy sealer thinset primer grout per ratio quarts',
  },
  rules: [
    { level: 'note', needs: 'WATER COMES_IN WHEN_RAIN', within: 14, unless: 'PAST' },
    { level: 'emergency', needs: 'INCH_DEEP WATERY', within: 16 },
    { level: 'emergency', needs: 'BURST PIPE', within: 6, unless: 'AROUND_PIPE' },
    { level: 'emergency', needs: 'HIT PIPE', within: 5, unless: 'AROUND_PIPE' },
    { level: 'emergency', needs: 'WATER GUSH', within: 5, unless: 'POUR_OTHER PROOF' },
    { level: 'emergency', needs: 'PIPE GUSH', within: 6, unless: 'AROUND_PIPE' },
    { level: 'emergency', needs: 'FIXTURE GUSH', within: 6, unless: 'POUR_OTHER PLANNED' },
    { level: 'emergency', needs: 'FIXTURE BURST', within: 4 },
    { level: 'emergency', needs: 'PIPE LEAK_FAST', within: 7, unless: 'LEAK_OTHER PAST FIXED_SAID' },
    { level: 'emergency', needs: 'CEILING LEAK_FAST', within: 8, unless: 'PAST PAINT_SAID' },
    { level: 'emergency', needs: 'CEILING WATER', within: 8, unless: 'PAST MARKS' },
    { level: 'emergency', needs: 'CEILING BULGE', within: 5 },
    { level: 'emergency', needs: 'FLOODING PLACE', within: 6, unless: 'PAST MARKET' },
    { level: 'emergency', needs: 'FLOODED PLACE ACTIVE', within: 9, unless: 'PAST MARKET' },
    { level: 'note', needs: 'FLOODED PLACE', within: 6, unless: 'MARKET' },
    { level: 'emergency', needs: 'CANT_STOP', unless: 'CALM' },
    { level: 'note', needs: 'SHUTOFF SHUTOFF_ASKED', within: 8, undeniable: true, about: 'valve' },
    {
      level: 'note',
      needs: 'VALVE_ANY VALVE_STIFF',
      within: 9,
      undeniable: true,
      unless: 'VALVE_OTHER',
      about: 'valve',
    },
    {
      level: 'emergency',
      needs: 'DROVE_IN IT_POURS',
      within: 22,
      unless: 'POUR_OTHER POURS_OTHER PAST',
      unlessBefore: 'SUPPOSED',
    },
    { level: 'note', needs: 'PINHOLE PIPES_ANY', within: 8 },
    { level: 'note', needs: 'SUPPLY_VALVE DAMP', within: 8 },
    { level: 'emergency', needs: 'WATER_HIT', within: 6 },
    { level: 'emergency', needs: 'STANDING_WATER', within: 6, unless: 'CRAWL PAST' },
    { level: 'note', needs: 'FIXTURE LEAKS', within: 7, unless: 'LEAK_OTHER' },
    { level: 'note', needs: 'LEAK_SAID', unless: 'LEAK_OTHER' },
    { level: 'note', needs: 'BURST PIPE PAST', within: 12 },
    { level: 'note', needs: 'FLOODED PAST', within: 10, unless: 'MARKET' },
  ],
  lookalikes: `burst_of flood_the_market flooded_with flood_light~ flood_lamp flood_zone flood_insurance flood_plain flood_coat spray_paint spray_adhesive spray_texture spray_foam spray_bottle spray_can spray_on spray_glue hair_spray overflow_planks overflow_boxes overflow_stock
    gushing_over gushing_about gushed_about gushed_over leak_proof leakproof leaky_budget dripping_paint paint_drip~ drip_edge drip_cap drip_pan drip_loop drip_coffee pouring_leveler pour_the_leveler pour_leveler pour_self_leveler pouring_self_leveler waterproof water_proof water_resistant
    pipe_dream pipe_cleaner~ pipe_organ pipe_clamp~ bag_pipe~ pipe_wrench stove_pipe down_pipe in_the_pipeline pipe_tobacco vacuum_hose dust_hose dust_collection_hose air_hose garden_hose compressor_hose panty_hose vacuum_tubing
    water_spot~ water_stain~ water_color water_based water_fall_edge waterfall_edge water_closet water_view water_feature water_bottle water_heater_closet`,
  clears: [
    { needs: 'PLUMBERS WATER_FIXED', within: 7, ordered: true },
    { needs: 'LEAK_GONE' },
    { needs: 'BUILDERS MENDED SOURCE', within: 14 },
    { needs: 'LEAK_SAID FIXED_SAID', within: 5, ordered: true },
    { needs: 'FIXED_BY PLUMBERS', within: 6, ordered: true },
  ],
};

export const PLUMBING: Lexicon = {
  hazard: 'plumbing',
  classes: {
    PIPES_HERE:
      'pipe~ piping plumbing water_line~ water_main~ supply_line~ drain~ drainage tube~ tubing pex copper radiant hydronic heated heating heater heat duct~ ductwork vent~ sprinkler~ manifold~',
    PIPE_IN:
      'in_the_way where_i_screw where_i_cut where_i_need_to where_i_nail where_i_want_to under_the_subfloor_where',
    LINES: 'pipe~ water_line~ plumbing duct~ tubing pex drain_pipe~ heating_pipe~',
    MAPPED: 'moved marked located mapped rerouted relocated found_its_way traced',
    PIPE_MEN: 'plumber~ hvac heating_contractor contractor',
  },
  rules: [{ level: 'stop', needs: 'LINES PIPE_IN', within: 6 }],
  here: 'PIPES_HERE',
  clears: [{ needs: 'PIPE_MEN MAPPED', within: 8 }],
};

export const SEWAGE: Lexicon = {
  hazard: 'sewage',
  classes: {
    RADIATORS: 'radiator~ heating boiler',
    SEWAGE: `sewage sewerage raw_sewage sewer_water sewer_backup sewer_back_up septic_water septic_backup human_waste human_feces black_water blackwater poop_water poopy_water toilet_water toilet_overflow toilet_overflows toilet_overflowing toilet_overflowed toilet_flood toilet_backup toilet_back_up toilet_spill toilet_backing_up toilet_backed_up waste_water wastewater effluent
      category_3 category_three categories_3 cat_3_water cat3 feces faeces fecal faecal excrement grey_water_backup gray_water_backup shit_water sewage_water septic_tank_overflow septic_overflow drain_backup sewer_flood flood_water floodwater toilet_waste overflowed_toilet overflowing_toilet backed_up_toilet sewage_backup poo_water crappy_water contaminated_water foul_water effluence sludge_water`,
    DRAINS:
      'sewer~ septic septic_tank toilet~ drain~ floor_drain shower_drain commode cesspool waste_pipe soil_pipe main_drain sewer_line~ sewer_main cleanout clean_out urinal drain_line~ sump sump_pump ejector_pump manhole~ loo~ lavatory inspection_chamber',
    BACKS_UP: `back_up backs_up backed_up backing_up backup~ backed overflow~ overflowed overflowing flood~ flooding flooded came_up coming_up comes_up bubbling bubbling_up spill~ spilled spilling soak~ soaked seep~ seeping ran_over running_over run_over all_over_the ran_onto poured pouring gush~ burst~ broke rising regurgitat* clogged_and flowing leaked_onto leaked_into leaking_onto coming_through came_through erupted spewed spewing burp~ burping belch~ belching gurgl* spitting_up throwing_up vomiting puking`,
    FILTH: 'poop poo shit crap turd~ pee_water waste feces sewage urine',
    FILTH_IN: 'water flood~ overflow~ overflowed toilet soaked_the pipe~ drain~ backed coming_up came_up floating',
    SEWAGE_NOW:
      'sewage sewerage raw_sewage sewer_water poop_water toilet_water septic_water shit_water black_water blackwater human_waste sewer_backup feces faeces poo_water toilet_waste septic_tank septic poopy_water waste_water wastewater effluent excrement loo_water lavatory_water',
    SEWAGE_LIES: 'soaked_carpet soaked_pad soaked_subfloor soaked_floor',
    PETS: 'dog cat pet puppy kitten litter mouse rat mice bird bat',
    DRAINS_HERE:
      'sewer~ septic overflow~ overflowed overflowing flood~ flooded flooding flood_water poop poo pooh shit crap turd~ backed_up back_up backup~ human_waste feces black_water',
    GREY: 'gray_water grey_water greywater graywater dirty_water nasty_water brown_water smelly_water sewer_smell sewer_gas smells_like_sewage smells_like_sewer smells_like_a_sewer smell_of_sewage sewage_smell septic_smell black_sludge river_water creek_water storm_water',
    MAIN_DRAIN:
      'main_drain main_line sewer_main sewer_line~ house_drain main_sewer drain_stack soil_stack floor_drain~ basement_drain',
    OVERFLOWED:
      'overflowed overflowing overflows over_flowed backed_up backing_up backs_up backed_right_up ran_over running_over came_back_up coming_back_up comes_back_up spilled_over spilling_over bubbled_up bubbling_up bubbling_over gurgling_up welled_up came_up_through coming_up_through burped_up up_onto out_onto all_over_the gushing',
    SPREADS:
      'push~ pushing pushed across spreading spread everywhere out_of standing pooling pooled under_the_vinyl under_the_planks under_the_laminate',
    OVERFLOW_NOT: 'backup_order never_overflowed insurance install_overflow',
    SMELL_OTHER: 'caulk paint glue adhesive silicone freshener sewage_pump candle primer new_vinyl cleaner',
    RESTORERS:
      'restoration_company restorer restoration restoration_crew cleanup_company clean_up_company professionals professional professionally remediation_company water_damage_company cleaning_company remediation pros crew plumber_and_restorer restoration_guys restoration_team remediation_crew clean_up_crew cleanup_crew',
    CLEANED:
      'cleaned disinfected sanitized sanitised treated cleared removed dried remediated decontaminated finished done came_and',
    SEWAGE_GONE:
      'sewage_cleaned_up sewage_was_cleaned sewage_is_cleaned sewage_has_been_cleaned sewage_was_removed professionally_cleaned cleaned_and_disinfected disinfected_and_dried cleaned_up_and_disinfected cleaned_dried_and_disinfected cleaned_disinfected_and_dried sewage_is_gone_and_disinfected sewage_cleanup_done sewage_cleaned',
  },
  rules: [
    { level: 'emergency', needs: 'SEWAGE_NOW BACKS_UP', within: 8, unless: 'PAST SEWAGE_LIES RADIATORS' },
    { level: 'emergency', needs: 'DRAINS BACKS_UP', within: 6, unless: 'PAST PLANNED' },
    { level: 'emergency', needs: 'FILTH FILTH_IN', within: 5, unless: 'PAST PETS' },
    { level: 'emergency', needs: 'GREY BACKS_UP', within: 8, unless: 'PAST RADIATORS' },
    { level: 'emergency', needs: 'SEWAGE_NOW SPREADS', within: 8, unless: 'PAST RADIATORS' },
    {
      level: 'emergency',
      needs: 'DRAINS OVERFLOWED',
      within: 10,
      unless: 'PAST OVERFLOW_NOT',
      unlessBefore: 'SUPPOSED',
    },
    { level: 'emergency', needs: 'MAIN_DRAIN BACKS_UP', within: 10, unless: 'PAST', unlessBefore: 'SUPPOSED' },
    { level: 'note', needs: 'DRAINS SMELL', within: 9, unless: 'SMELL_OTHER', about: 'smell' },
    { level: 'stop', needs: 'SEWAGE', unless: 'RADIATORS' },
    { level: 'stop', needs: 'SEWAGE_NOW', unless: 'RADIATORS' },
    { level: 'stop', needs: 'GREY', unless: 'RADIATORS' },
    { level: 'stop', needs: 'DRAINS BACKS_UP PAST', within: 14 },
  ],
  lookalikes: `${SMELL_RISES} sewer_clean_out sewer_cleanout septic_guy septic_inspection septic_inspector septic_permit sewer_bill sewer_access septic_lid sewer_cover cleanout_cover clean_out_cover toilet_flange~ toilet_paper toilet_seat~ toilet_height toilet_removed toilet_removal toilet_room french_drain drain_cover~ drain_grate~ drain_field brain_drain
    cat_3_boxes backup_plan backup_box~ backup_planks back_up_plan backup_file~ back_up_a back_up_the backed_vinyl foam_backed felt_backed pad_backed cork_backed backed_by backed_plank~ backed_carpet rubber_backed jute_backed backup_battery backup_copy back_up_to backed_into backed_out poop_brown crap_i crap_ton holy_crap oh_crap this_crap crap_shoot bull_crap no_shit shit_i oh_shit holy_shit shit_ton this_shit`,
  here: 'SEWAGE DRAINS_HERE',
  clears: [{ needs: 'RESTORERS CLEANED', within: 24 }, { needs: 'SEWAGE_GONE' }],
};
