/** Wounds, eyes, falls and feeling unwell. */

import type { Lexicon } from '../tables.ts';

/** `fuming at`, `wife is fuming`: anger, not vapor, and so for each who may be angry. */
const ANGRY = [
  'i_am',
  'im',
  'i_was',
  'he_is',
  'hes',
  'she_is',
  'shes',
  'wife_is',
  'husband_is',
  'wife_was',
  'husband_was',
  'still',
  'left',
  'was',
]
  .map((who) => `${who}_fuming`)
  .join(' ');

/** Figures of speech about money, skill and mood, and names of things, in words of the body. */
const MONEY = ['wallet', 'budget', 'bank_account', 'checkbook', 'credit_card', 'savings', 'purse', 'checking_account'];
const HEART_SCARES = ['heart_attack', 'stroke', 'coronary', 'seizure', 'meltdown'];
const FIGURES = [
  ...MONEY.flatMap((purse) =>
    [
      'bleeding',
      'is_bleeding',
      'was_bleeding',
      'bled',
      'is_hurting',
      'got_hurt',
      'is_unconscious',
      'is_dead',
      'passed_out',
      'fainted',
      'collapsed',
      'is_choking',
      'is_in_shock',
      'cant_breathe',
    ].map((hurt) => `${purse}_${hurt}`),
  ),
  ...['lost', 'lose', 'losing'].flatMap((lost) =>
    ['my', 'his', 'her', 'our'].flatMap((whose) =>
      ['head', 'mind', 'touch', 'shirt', 'marbles', 'cool', 'grip', 'voice', 'appetite', 'tongue'].map(
        (what) => `${lost}_${whose}_${what}`,
      ),
    ),
  ),
  ...['numbers', 'figures', 'math', 'heights', 'fractions', 'business', 'details'].map((what) => `head_for_${what}`),
  ...['eye_for', 'an_ear_for', 'nose_for', 'hand_at', 'heart_for', 'stomach_for', 'guts_for', 'sweet_tooth_for'],
  ...['nearly', 'almost', 'about', 'practically', 'damn_near'].flatMap((near) =>
    HEART_SCARES.flatMap((scare) =>
      [
        'at',
        'over',
        'when_i_saw',
        'when_she_saw',
        'when_he_saw',
        'when_we_saw',
        'seeing',
        'when_i_opened',
        'when_i_heard',
        'looking',
      ].map((at) => `${near}_had_a_${scare}_${at}`),
    ),
  ),
  ...['all_ten', 'all_my', 'all_his', 'all_her', 'all_10', 'ten', '10', 'all'].flatMap((all) =>
    ['fingers', 'toes', 'digits', 'limbs'].flatMap((what) =>
      ['still_on', 'still_attached', 'intact', 'accounted', 'still_there', 'remain', 'left'].map(
        (on) => `${all}_${what}_${on}`,
      ),
    ),
  ),
  ...[
    'bay',
    'ramp',
    'entrance',
    'station',
    'style',
    'driver',
    'company',
    'service',
    'garage',
    'crew',
    'job',
    'shift',
    'bill',
    'width',
  ].map((what) => `ambulance_${what}`),
].join(' ');

export const WOUND: Lexicon = {
  hazard: 'wound',
  classes: {
    WHOSE:
      'my his her their our your kids wifes husbands sons daughters dads moms helpers buddys brothers sisters partners friends somebodys someones',
    PART: `hand hands finger fingers thumb thumbs arm arms leg legs foot feet toe toes knee knees shin shins wrist wrists palm elbow head face eye eyes eyelid nose lip mouth chin cheek forehead neck shoulder thigh calf ankle ankles chest skin knuckle knuckles fingertip fingertips heel ear scalp skull ribs stomach belly forearm
      pinky pinkie index_finger ring_finger middle_finger pointer big_toe kneecap fingernail toenail eyeball throat temple groin hip bicep body tongue gut`,
    EYE: 'eye eyes eyeball',
    /** Body parts that have no other meaning in this trade. */
    LIMB: 'finger fingers thumb thumbs wrist wrists elbow shin shins forearm eyelid eyeball fingertip fingertips toes forehead pinky pinkie eyes knuckles ankle foot hand hands palm arm leg knee toe eye face head skin calf thigh scalp heel index_finger kneecap fingernail toenail feet',
    SLASHED: `cut~ cutting sliced slice~ slicing slashed slash~ gashed gash~ stabbed stab~ lacerat* nicked chopped chop~ severed slit split punctured puncture~ pierced pierce~ impaled jabbed sawed drilled burned burnt burn~ scalded crushed crush~ smashed smash~ pinched pinch~ mashed hammered hit fractured sprained twisted dislocated
      scraped skewered injured jammed squashed ripped_open tore ripped nailed stapled shot screwed caught sanded skinned shaved banged whacked bashed broke broken bruised poked degloved mangled got_cut went_through went_into going_through ran_through pricked slammed dropped dropped_on fell_on landed_on ran_over infected opened_up opened nipped clipped hacked grazed gouged snagged pinned trapped laid_open`,
    AWAY: 'away clear_of off_of far keep keeping guard push_stick hold held holding grip',
    SHARP: `nail~ grinder~ router_bit jigsaw~ multitool multi_tool oscillating_tool planer screw~ splinter~ staple~ glass blade~ metal chisel knife utility_knife carpet_knife razor razor_blade tack~ tack_strip~ nail_gun brad~ drill_bit saw shard~ sliver~ wood_chip wire spike saw_blade pry_bar scraper awl pin~ box_cutter linoleum_knife hook_blade something piece~ chunk~ fastener~ drywall_screw`,
    INTO: 'in into through thru inside under stuck embedded lodged went_in went_into went_through right_through clean_through deep out_of across',
    BLEED: 'bleed~ bleeding bled hemorrhag* blood bloody gushing_blood blood_loss pumping_blood',
    BLEED_BAD: `wont_stop bad badly lot heavy heavily everywhere help still profusely deep hard fast cut knife saw blade stop_the stop_bleeding cant_stop all_over pretty a_ton gushing hand finger thumb arm leg foot head pressure squirting spurting soaking towel through_the_bandage
      through_bandage minutes after from im i_am hes shes he_is she_is pouring from_my stitches tourniquet nail nose pulsing`,
    BLEEDING:
      'im_bleeding i_am_bleeding bleeding_bad bleeding_badly bleeding_a_lot bleeding_heavily bleeding_like wont_stop_bleeding cant_stop_bleeding cant_stop_the_bleeding cant_get_the_bleeding bleeding_wont_stop bleeding_everywhere lost_a_lot_of_blood losing_blood lots_of_blood a_lot_of_blood blood_everywhere blood_all_over keeps_bleeding still_bleeding hes_bleeding shes_bleeding is_bleeding are_bleeding blood_is_spurting blood_wont_stop blood_pouring too_much_blood tons_of_blood so_much_blood started_bleeding how_to_stop_bleeding how_do_i_stop_the_bleeding stop_the_bleeding stop_bleeding',
    GOT_IN:
      'got get flew fly flying splash~ splashed dust powder chip~ splinter~ glue caulk something debris stuff sawdust metal stripper cement leveler leveller thinset paint primer adhesive solvent bleach grit shard~ piece~ speck foreign chemical~ mortar concrete lime sand insulation fiberglass foam remover dropped fell went shot hit poked scratched lodged stuck have',
    IN_EYE:
      'in_my_eye in_my_eyes in_his_eye in_his_eyes in_her_eye in_her_eyes in_the_eye in_the_eyes in_eye in_eyes in_both_eyes in_my_left_eye in_my_right_eye in_one_eye into_my_eye into_my_eyes into_his_eye into_her_eye in_their_eye in_their_eyes in_his_left_eye in_his_right_eye in_her_left_eye in_her_right_eye in_an_eye hit_my_eye scratched_my_eye poked_my_eye in_my_kids_eye in_my_sons_eye in_my_wifes_eye in_my_husbands_eye in_kids_eyes in_kids_eye on_my_eye my_eye_with hit_me_in_the_eye',
    EYE_HURTS:
      'burn~ burning sting~ stinging hurt~ red swollen scratch~ scratched bleeding watering cant_see blurry pain painful itchy gritty open blind wont_open blurred tearing',
    CUT_OFF:
      'took_the_end took_the_tip took_a_chunk took_a_piece cut_off cut_the_tip sliced_off chopped_off sawed_off took_off lost severed tip_of amputat* hanging_off half_off lopped_off cut_my_fingertip almost_off nearly_cut',
    BONE_SHOWS:
      'bone_is_showing bone_showing bone_shows bone_sticking bone_is_sticking bone_is_poking bone_poking bone_is_out see_the_bone see_bone bone_came_through compound_fracture',
    TO_BONE:
      'to_the_bone see_bone see_the_bone seeing_bone bone_sticking bone_showing down_to_bone bone_is_showing amputated amputation severed_artery artery exposed_bone see_my_bone tendon compound_fracture finger_is_gone finger_gone lost_a_finger lost_my_finger lost_a_thumb nail_bed lost_a_fingertip flap_of_skin deep_gash deep_cut bad_gash big_gash nasty_cut nasty_gash bad_cut deep_wound open_wound puncture_wound stab_wound flesh_wound head_wound gaping',
    FELL: 'fell falling_off fallen fall took_a_fall slipped tumbled',
    FROM: 'ladder stairs staircase stair steps roof scaffold scaffolding joists attic through_the_floor through_the_ceiling through_the_joists step_stool stepladder down_the_stairs off_the_ladder off_a_ladder off_ladder stool chair through_the_hole through_a_hole stairwell through_the_subfloor balcony',
    UNWELL: `passed_out fainted unconscious unresponsive not_breathing cant_breathe can_not_breathe couldnt_breathe trouble_breathing hard_to_breathe difficulty_breathing struggling_to_breathe short_of_breath stopped_breathing collapsed_on having_a_seizure seizure chest_pain~ chest_hurts chest_is_tight chest_feels_tight chest_tightness tightness_in_my_chest pain_in_my_chest
      pain_in_chest pressure_in_my_chest heart_attack having_a_stroke stroke_symptoms not_responding wont_wake_up isnt_waking_up is_not_waking_up not_waking_up cant_wake_him cant_wake_her cant_wake_them isnt_responding is_not_responding knocked_me_out knocked_him_out knocked_her_out got_knocked_out was_knocked_out knocked_unconscious blacked_out concussion hit_my_head hit_his_head hit_her_head cracked_my_head banged_my_head head_injury broken_bone broken_arm broken_leg broke_my broke_his broke_her
      broken_wrist broken_ankle broken_finger broken_toe broken_rib heat_stroke heatstroke heat_exhaustion allergic_reaction anaphyla* chemical_burn~ third_degree choking choked_on turning_blue slurring slurred going_into_shock in_shock went_into_shock call_an_ambulance need_an_ambulance ambulance need_911 call_911 overdose poisoned poison_control sunstroke left_arm_is_numb left_arm_numb arm_is_numb numb_arm
      burned_my burnt_my burned_his burned_her electric_burn went_limp vision_went coughing_up_blood cant_stand_up cant_get_up hurt_bad badly_hurt badly_injured seriously_hurt seriously_injured is_trapped trapped_under pinned_under crushed_under fell_on_top stung_by_a heart_is_racing electrocuted_him having_chest jaw_pain drowning throwing_up_blood cant_put_weight put_no_weight about_to_pass_out going_to_pass_out gonna_pass_out lips_are_blue is_blue having_trouble_breathing`,
    CANT_DO:
      'cant cannot can_not couldnt could_not unable cant_catch cannot_catch couldnt_catch cant_get cannot_get couldnt_get cant_take cant_draw cant_seem struggling fighting trouble difficulty hard_time barely hardly gasping_for',
    BREATH: 'breath breaths breathe breathing enough_air',
    BREATHLESS:
      'floor subfloor wood underlayment underlay carpet planks vinyl membrane wall walls concrete slab plywood',
    WHEEZE:
      'wheez* gasping_for_air gasping_for_breath fighting_for_air fighting_for_breath cant_get_air cant_get_any_air cant_get_enough_air choking_on_the_dust choking_on_dust choking_on_the_fumes',
    WHEEZE_OTHER: 'compressor saw vac vacuum motor fridge furnace router sander mower truck pump hinge door',
    COUGH: 'cough~ coughing hacking hacks',
    COUGHS_ON:
      'wont_stop wont_quit cant_stop couldnt_stop doesnt_stop nonstop non_stop not_stopping keeps keep all_night all_day for_hours hours uncontrollably blood fit fits violently worse really_bad',
    THROAT: 'throat windpipe airway airways my_tongue his_tongue her_tongue my_lips his_lips her_lips',
    CLOSES: 'clos* swell~ swelling swollen tight tighten~ tightening constrict* sealing_up seizing',
    ASTHMA: 'asthma asthmatic inhaler nebulizer epipen epi_pen',
    ASTHMA_NOW:
      'attack attacks flare~ flaring flared acting_up acted_up kicked_in kicking_in triggered set_off setting_off isnt_helping not_helping doesnt_help not_working isnt_working ran_out empty worse severe bad_now right_now having',
    TASTES_METAL:
      'metallic_taste metal_taste metally_taste taste_metal taste_metallic tasting_metal tastes_metallic tastes_like_metal taste_like_metal tastes_like_pennies taste_like_pennies taste_of_metal taste_of_pennies taste_pennies tasting_pennies taste_copper taste_of_copper coppery_taste tastes_like_copper',
    TASTE_OTHER: 'water tap faucet coffee food decor style designer soda sink',
    ILL_NOW: `dizzy dizziness light_headed lightheaded nausea nauseous nauseated queasy woozy vomit~ vomiting puke puked puking gonna_puke throw_up throwing_up threw_up feel_sick feeling_sick feels_sick felt_sick made_me_sick making_me_sick makes_me_sick sick_to_my_stomach sick_to_his_stomach sick_to_her_stomach feel_faint
      feeling_faint going_faint nearly_fainted almost_fainted room_is_spinning head_is_spinning head_spinning head_is_pounding head_pounding splitting_headache pounding_headache feel_drunk feeling_drunk loopy feel_ill feeling_ill really_sick so_sick tunnel_vision seeing_spots legs_are_rubber`,
    ILL_AT: `sand~ sanding sanded strip~ stripping stripped stripper grind~ grinding ground_down scrape~ scraping scraped glu* gluing glueing glue adhesive~ mastic~ epoxy~ heat_gun dust dusty demo demoing cutting_concrete cutting_tile thinset spread~ spreading primer priming caulking sealing sealer painting paint foam remover demolition torching
      ripping_up tearing_up pulling_up pulling_carpet tearing_out sweep~ sweeping vacuuming`,
    SAW_TOOL: `saw~ table_saw~ miter_saw~ mitre_saw chop_saw~ circular_saw~ circ_saw~ skill_saw jig_saw jigsaw~ band_saw track_saw sawblade saw_blade blade~ grinder~ router~ multi_tool multitool oscillating_tool nail_gun nailer~ planer~ jointer utility_knife carpet_knife box_cutter knife drill~ power_tool`,
    SAW_GETS:
      'got gets took_a_bite takes_a_bite took_a_piece took_a_chunk bit bites caught nipped chewed ate grabbed took tagged clipped jumped_into jumped_onto slipped_into slipped_onto ran_into ran_over ran_across went_into went_across went_over kicked_back_into kicked_into met hit grazed raked',
    MEETS:
      'into_the against_the on_the met touched hit got_caught slipped_into slipped_onto went_into got_into got_by caught_in caught_by in_the under_the across_the got_pulled',
    FLAKE:
      'chip~ chips flake~ flakes peeling~ peelings crumb~ crumbs dust powder scraping~ scrapings shaving~ bits pieces piece chunk~',
    FLAKED:
      'paint painted windowsill window window_sill baseboard trim lead asbestos tile tiles mastic thinset grout mortar plaster linoleum lino popcorn ceiling vermiculite insulation leveler leveller concrete cement glue adhesive old drywall varnish caulk',
    EATS: 'around_her_mouth around_his_mouth on_her_lips on_his_lips around_its_mouth ate eat eats eating eaten lick~ licks licked licking licked_up chew~ chews chewed chewing swallow~ swallowed swallowing in_her_mouth in_his_mouth in_their_mouth in_its_mouth in_my_mouth mouthing munch~ munching nibbl* gnaw* gobbl* suck~ sucking ingest* tasted tasting mouthful',
    PAINTED_PART:
      'painted paint windowsill~ window_sill~ sill sills trim baseboard~ casing door_casing door_frame crib railing spindle~ banister molding peeling',
    BREATHES: 'breathing breathed breathes breath~ inhal* coughing sneezing',
    EATEN: `paint_chip~ paint_flake~ paint_dust paint_peeling~ thinset mortar_powder grout_powder grout_haze mastic adhesive glue lead_paint lead_dust lead_chip~ asbestos plaster joint_compound spackle caulk vermiculite leveler leveller floor_patch wet_paint primer varnish sealer tile_dust concrete_dust cement powder foam_insulation antifreeze`,
    FOOD: 'snack~ cookie~ cracker~ potato tortilla cereal food foods dinner lunch breakfast meal~ chocolate popcorn_on sandwich table spaghetti toast bread pizza',
    ALL_WELL:
      'nothing_is_wrong nothing_wrong nothing_was_wrong nothings_wrong nothing_broken nothing_is_broken said_nothing says_nothing all_clear is_fine its_fine im_fine i_am_fine was_fine hes_fine shes_fine all_good checked_out clean_bill no_big_deal no_damage cleared_me cleared_him cleared_her said_its_fine said_im_fine said_i_am_fine sent_me_home sent_him_home sent_her_home last_year last_month years_ago',
    SWALLOWED: 'swallowed swallow drank ate eaten ingested drinking licking inhaled_a got_into chewed_on',
    POISON:
      'glue stripper bleach chemical~ adhesive solvent thinner paint_thinner cleaner nail screw staple~ silica_gel packet primer caulk sealer mineral_spirits poison antifreeze grout_sealer foam battery rat_bait remover acid putty filler varnish',
    SHOT: 'shot_myself nailed_myself nail_gunned shot_a_nail_through shot_a_nail_into shot_in_the nail_through_my nail_in_my nail_through_his nail_through_her screw_through_my screw_in_my staple_in_my splinter_in_my glass_in_my blade_in_my cut_myself cut_himself cut_herself stabbed_myself burned_myself hurt_myself injured_myself sliced_myself slashed_myself gashed_myself stapled_myself glued_my_fingers glued_my_hand glued_my_eye hammered_my_thumb hammered_my_finger punctured_my stuck_in_my stuck_in_his stuck_in_her poked_myself impaled_myself cut_me shot_me hit_me_in drilled_through_my drilled_into_my cut_my_finger cut_my_hand cut_my_thumb',
    STEPPED_ON:
      'stepped_on stepped_onto steped_on stepped_in step_on kneeled_on knelt_on stood_on sat_on trod_on walked_on put_my_foot_on put_my_hand_on landed_on fell_on fell_onto grabbed',
    TETANUS:
      'tetanus lockjaw tetnus need_stitches needs_stitches need_a_stitch stitches first_aid puncture_wound wound_is wound_infected infected_cut infected_wound infected_finger rusty_nail_puncture nail_puncture blood_poisoning urgent_care emergency_room er_visit go_to_the_er need_the_er need_a_doctor go_to_the_hospital gone_to_hospital red_streak~',
    RUSTY: 'rusty',
    CAULKS: 'caulk paint stain color dye ink mastic tannin radiator air knots knot primer sealant grout tape',
    STAINS: 'stain stains red orange old',
    LIKE_HAND: 'by_hand handle handles joint joints glove gloves protect protection',
    WITHOUT_HURT: 'without losing without_losing avoid safely safe',
    CANT_MOVE: 'cant_move cant_feel cannot_move cannot_feel couldnt_move wont_move lost_feeling numb',
    I_HURT:
      'i_hurt just_hurt got_hurt badly_hurt really_hurt hurt_my_hand hurt_my_finger hurt_my_thumb hurt_my_eye hurt_my_foot hurt_my_head hurt_my_arm hurt_my_leg',
    LIMB_SURE:
      'finger fingers thumb thumbs wrist elbow shin fingertip fingertips pinky forehead eyelid toes toe knuckle knuckles forearm ankle hand palm index_finger',
    EYES_SAID: 'eyes',
    BOARDS: 'plank planks board boards trim baseboard carpet floor deep_cut_in wood drywall',
    THINGS_FALL:
      'tile tiles box boxes vermiculite insulation plaster dust nosing trim board boards plank planks carpet runner paint price prices phone tool tools hammer rail cat',
    UNWELL_OTHER: 'rug',
    KIT: 'kit supplies stitch_pattern carpet_stitches',
    STUCK_IN_ME:
      'stuck_in_me in_me through_me into_me stuck_in_someone out_of_me in_my_leg went_in_deep deep_in stuck_in_my stuck_in_his stuck_in_her stuck_in_their embedded_in_my lodged_in_my pull_it_out_of_my',
    GOT_IN_SURE: 'got_in went_in flew_in splashed_in shot_in poked splashed chemical cement powder lime speck',
    PERSON:
      'husband wife son daughter kid child toddler baby helper worker friend buddy dad mom brother sister coworker somebody someone guy he she i boyfriend girlfriend partner neighbor contractor uncle aunt',
    HURT_SAID:
      'collapsed hurt_badly got_hurt is_hurt was_hurt got_injured is_injured is_unconscious fell_and fell_down fell_over fell_hard is_choking not_moving isnt_moving cant_breathe seriously_hurt badly_hurt passed_out fainted was_electrocuted got_electrocuted wont_wake is_not_breathing isnt_breathing got_crushed got_trapped is_stuck_under is_trapped',
    HEALED: `bleeding_stopped bleeding_has_stopped stopped_the_bleeding stopped_bleeding bleeding_is_under_control got_stitches got_it_stitched stitched_up stitched_it saw_a_doctor saw_the_doctor doctor_checked doctor_looked doctor_said doctor_saw been_to_the_er been_to_the_hospital back_from_the_er back_from_the_hospital back_from_urgent_care went_to_the_er went_to_the_hospital went_to_urgent_care paramedics_checked
      paramedics_came ambulance_came ambulance_took nurse_checked nurse_looked im_fine_now im_ok_now im_okay_now feeling_fine_now all_bandaged bandaged_it bandaged_up cleaned_and_bandaged rinsed_it_out eye_is_fine eye_is_ok eye_feels_fine got_a_tetanus_shot had_a_tetanus_shot got_my_tetanus had_my_tetanus hes_fine_now shes_fine_now hes_ok_now shes_ok_now in_the_hospital_now is_being_treated got_treated was_treated is_bandaged hes_okay_now urgent_care_said_nothing urgent_care_says_nothing urgent_care_cleared doctor_cleared doctor_says er_said_nothing er_cleared`,
    MEETS_SURE:
      'slipped_into slipped_onto slid_into went_into ran_into got_into got_caught caught_in got_pulled pulled_into touched met hit bumped_into fell_into into_the against_a against_the_spinning',
    DUST_SAID: 'dust dusty powder',
    BREATHED: 'breathing breathed inhaling inhaled',
    LUNGS: 'lung~ lungs my_chest his_chest her_chest',
    LUNGS_HURT: 'hurt~ hurts burn~ burning ache~ aching sore tight rattl* raw on_fire heavy whistl* crackl*',
  },
  rules: [
    { level: 'emergency', needs: 'BLEEDING', undeniable: true, unless: 'CAULKS' },
    { level: 'emergency', needs: 'BLEED BLEED_BAD', within: 5, unless: 'CAULKS STAINS' },
    { level: 'emergency', needs: 'BLEED MINE', within: 8 },
    { level: 'emergency', needs: 'SLASHED MINE', within: 5, unless: 'LIKE_HAND' },
    { level: 'emergency', needs: 'SHARP INTO LIMB', within: 7, ordered: true, unless: 'LIKE_HAND' },
    { level: 'emergency', needs: 'SHARP INTO MINE', within: 11, ordered: true, unless: 'LIKE_HAND' },
    { level: 'emergency', needs: 'SLASHED LIMB_SURE', within: 3, ordered: true, unless: 'LIKE_HAND WITHOUT_HURT' },
    { level: 'emergency', needs: 'MINE SLASHED', within: 4, ordered: true, unless: 'LIKE_HAND' },
    { level: 'emergency', needs: 'GOT_IN IN_EYE', within: 8, about: 'eye' },
    { level: 'emergency', needs: 'MY_EYE EYE_HURTS', within: 5, about: 'eye' },
    { level: 'emergency', needs: 'EYES_SAID EYE_HURTS', within: 3, about: 'eye' },
    { level: 'emergency', needs: 'CANT_MOVE MINE', within: 3, ordered: true, undeniable: true },
    { level: 'emergency', needs: 'I_HURT MINE', within: 3 },
    { level: 'emergency', needs: 'CUT_OFF MINE', within: 6 },
    { level: 'emergency', needs: 'CUT_OFF LIMB_SURE', within: 6 },
    { level: 'emergency', needs: 'BONE_SHOWS', unless: 'PRICE' },
    { level: 'emergency', needs: 'TO_BONE', unless: 'BOARDS PRICE' },
    { level: 'emergency', needs: 'FELL FROM', within: 6, unless: 'THINGS_FALL' },
    {
      level: 'emergency',
      needs: 'UNWELL',
      undeniable: true,
      unless: 'CAULKS UNWELL_OTHER PRICE_SEEN PRICE_DID',
      about: 'ill',
    },
    {
      level: 'emergency',
      needs: 'CANT_DO BREATH',
      within: 5,
      ordered: true,
      undeniable: true,
      unless: 'BREATHLESS_CANT PRICE_SEEN PRICE_DID',
      about: 'ill',
    },
    { level: 'emergency', needs: 'WHEEZE', unless: 'WHEEZE_OTHER PRICE_SEEN', about: 'ill' },
    {
      level: 'emergency',
      needs: 'COUGH COUGHS_ON',
      within: 5,
      undeniable: true,
      unless: 'WHEEZE_OTHER PRICE_SEEN',
      about: 'ill',
    },
    { level: 'emergency', needs: 'THROAT CLOSES', within: 6, about: 'ill' },
    { level: 'emergency', needs: 'ASTHMA ASTHMA_NOW', within: 5, unlessBefore: 'SUPPOSED', about: 'ill' },
    { level: 'emergency', needs: 'LUNGS LUNGS_HURT', within: 5, ordered: true, unless: 'PRICE_SEEN', about: 'ill' },
    { level: 'emergency', needs: 'YOUNG BREATHED DUST_SAID', within: 10, unlessBefore: 'SUPPOSED', about: 'breathed' },
    { level: 'emergency', needs: 'TASTES_METAL', unless: 'TASTE_OTHER', about: 'ill' },
    { level: 'emergency', needs: 'ILL_NOW ILL_AT', within: 16, unless: 'PRICE_SEEN PRICE_DID', about: 'ill' },
    { level: 'emergency', needs: 'SWALLOWED POISON', within: 7, about: 'poison' },
    {
      level: 'emergency',
      needs: 'YOUNG EATS EATEN',
      within: 14,
      unless: 'FOOD',
      unlessBefore: 'SUPPOSED',
      about: 'poison',
    },
    {
      level: 'emergency',
      needs: 'YOUNG EATS FLAKE FLAKED',
      within: 16,
      unless: 'FOOD',
      unlessBefore: 'SUPPOSED',
      about: 'poison',
    },
    {
      level: 'emergency',
      needs: 'CHILD EATS OLD PAINTED_PART',
      within: 16,
      unless: 'FOOD PAST',
      unlessBefore: 'SUPPOSED',
      about: 'poison',
    },
    {
      level: 'emergency',
      needs: 'CHILD EATS LEAD_YEAR PAINTED_PART',
      within: 22,
      unless: 'FOOD PAST',
      unlessBefore: 'SUPPOSED',
      about: 'poison',
    },
    {
      level: 'emergency',
      needs: 'YOUNG BREATHES FLAKE FLAKED',
      within: 16,
      unlessBefore: 'SUPPOSED',
      about: 'breathed',
    },
    {
      level: 'emergency',
      needs: 'SAW_TOOL SAW_GETS LIMB_SURE',
      within: 9,
      ordered: true,
      unless: 'LIKE_HAND WITHOUT_HURT',
    },
    { level: 'emergency', needs: 'SAW_TOOL SAW_GETS MINE', within: 9, ordered: true, unless: 'LIKE_HAND WITHOUT_HURT' },
    {
      level: 'emergency',
      needs: 'LIMB_SURE MEETS_SURE SAW_TOOL',
      within: 6,
      ordered: true,
      unless: 'LIKE_HAND WITHOUT_HURT AWAY',
    },
    {
      level: 'emergency',
      needs: 'MINE MEETS SAW_TOOL',
      within: 7,
      ordered: true,
      unless: 'LIKE_HAND WITHOUT_HURT AWAY',
    },
    { level: 'emergency', needs: 'SHOT', unless: 'LIKE_HAND' },
    { level: 'emergency', needs: 'STEPPED_ON SHARP', within: 5 },
    { level: 'emergency', needs: 'RUSTY SHARP LIMB', within: 12 },
    { level: 'emergency', needs: 'TETANUS', unless: 'KIT ALL_WELL' },
    { level: 'emergency', needs: 'SHARP STUCK_IN_ME', within: 5 },
    { level: 'emergency', needs: 'MY_EYE GOT_IN_SURE', within: 5, about: 'eye' },
    { level: 'emergency', needs: 'PERSON HURT_SAID', within: 4, unless: 'PRICE_SEEN PRICE_DID' },
  ],
  /** `my hand`, `his left thumb`: part of a person, not of a tool or a room. */
  joins: {
    MINE: { needs: 'WHOSE PART', within: 3 },
    MY_EYE: { needs: 'WHOSE EYE', within: 3 },
    /** `the wood can't breathe`. */
    BREATHLESS_CANT: { needs: 'BREATHLESS CANT_DO', within: 2 },
    /** `at the price`, `the quote was`: what shocks or takes the breath is money. */
    PRICE_SEEN: { needs: 'PRICE_SEES PRICE', within: 4 },
    PRICE_DID: { needs: 'PRICE PRICE_DOES', within: 4 },
  },
  lookalikes: `${ANGRY} ${FIGURES} fuming_at fuming_about fuming_over fuming_mad fuming_that fuming_because choking_point~ choke_point~ choked_up choking_hazard~ bleeding_me_dry is_bleeding_me_dry are_bleeding_me_dry bleeding_my_wallet is_bleeding_my_wallet bleeding_my_budget is_bleeding_my_budget bleeding_the_budget drowning_in cut_off_date~ cut_off_time cut_off_point cutoff_date stab_at a_stab stabbing_guess stab_in_the_dark cough_up coughed_up_the cough_up_the coughing_up_the take_my_breath takes_my_breath breath_of_fresh save_your_breath catch_your_breath dont_hold_your_breath hold_my_breath
    bleed_caulk caulk_bleeding caulk_bleed~ bleed_through bleeding_through bleeds_through bleed_the_radiator bleed_the_line bleed_valve bleed_the_valve bleed_air bleeder_valve color_bleed stain_bleed tannin_bleed bleeding_edge blood_stain~ blood_red blood_orange bloody_hell blood_sweat bloody_thing full_bleed mastic_bleed ink_bleed bleeding_out_of_the_seams glue_bleed
    knee_wall~ knee_pad~ knee_kicker finger_joint~ finger_jointed finger_groove rule_of_thumb thumb_rule thumb_tack~ thumb_screw~ thumb_nail_edge hand_saw~ handsaw hand_rail~ handrail hand_tool~ hand_scraped hand_scrape hand_plane by_hand on_hand at_hand hand_truck in_hand free_hand first_hand left_hand_side right_hand_side left_hand_door right_hand_door second_hand give_me_a_hand lend_a_hand hand_me_down hand_held hand_sand hand_nail hand_cut hand_towel handed hand_drawn on_the_other_hand other_hand_side
    face_nail~ face_of face_down face_up face_frame face_side face_board in_the_face on_the_face head_of_the_stairs head_start head_room head_space head_jamb door_head head_casing over_my_head overhead ahead nail_head~ screw_head~ head_height back_of my_head_around wrap_my_head off_my_head top_of_my_head scratching_my_head head_scratcher
    foot_of_the square_foot square_feet sq_foot sq_feet linear_foot linear_feet lineal_foot lineal_feet per_foot running_foot cubic_foot cubic_feet foot_traffic foot_note foot_print one_foot two_foot two_feet foot_long foot_wide foot_board foot_level a_foot cold_feet on_my_feet under_foot
    leg_of table_leg~ chair_leg~ sofa_leg~ bed_leg~ furniture_leg~ leg_room pant_leg legwork arm_chair arm_rest arm_and_a_leg costs_an_arm chest_of_drawers chest_freezer tool_chest cedar_chest hope_chest toe_kick~ toe_nail~ toenailed toe_space toe_board heel_of shoe_heel~ high_heel~ elbow_fitting elbow_grease pvc_elbow elbow_room neck_of bottle_neck shoulder_plane hip_roof lip_of lip_at tongue_and ear_plug~ ear_protection ear_muff~ mouth_of palm_sander palm_nailer palm_tree skin_coat nose_of stair_nose~ stair_nosing calf_skin
    eye_level eyeball_it eye_ball_it eye_ball_the eyeball_the eyeballed eye_protection eye_catching birds_eye bulls_eye eye_sore eye_bolt~ eye_hook~ catch_my_eye caught_my_eye my_eye_on an_eye_on keep_an_eye in_my_eyes_it in_my_eyes_this easy_on_the_eye easy_on_the_eyes eye_screw~ private_eye
    fell_in_love fell_short fall_short fell_behind fall_behind fall_in_love fell_for fall_color~ fall_off_the_wagon fell_through_on falls_between fell_out_of_love fall_apart fell_asleep
    bone_white bone_color bone_dry bare_bones bones_of_the_house good_bones back_to_back stroke_of stroke_engine brush_stroke heart_pine heartwood killing_me dying_to drop_dead to_die_for stitch_pattern stitched_edge shot_in_the_dark give_it_a_shot worth_a_shot best_shot screen_shot poison_ivy_green bit_by_bit hit_submit hit_the_studs hit_the_stud hit_a_stud hit_enter hit_send hit_the_button hurt_my_wallet hurt_my_feelings hurts_my_brain
    wound_up wound_around wound_on wound_the stroke_across my_back_yard head_over head_to_the head_down broke_my_budget broke_my_bank broke_my_heart broke_my_saw broke_my_drill broke_my_blade broke_my_tape broke_my_plank broke_my_pry broke_my_knife broke_my_scraper broke_my_hammer broke_my_pull broke_my_tapping broke_my_streak burned_my_motor burned_my_belt burnt_my_bit burned_my_boards burned_my_wood burned_my_trim burned_my_cut
    cut_myself_some cut_myself_a cut_my_losses cut_my_planks cut_my_boards cut_my_trim cut_my_baseboard cut_my_time cut_my_costs cut_my_cost cut_my_bill in_shock_at in_shock_how ambulance_chaser cut_me_a cut_me_some hit_me_in_the_wallet got_into_flooring got_into_diy hit_me_in_the_budget grabbed_a_box nearly_fell almost_fell nearly_fell_over bleeding_money bleeding_cash bleed_money bleeding_us_dry gave_me_a_heart_attack near_heart_attack shot_myself_in_the_foot choked_on_the_price choke_on_the_price stabbed_in_the_back bit_off_more knocked_me_out_with broke_my_back_laying kicked_my_butt costs_me_an_arm passed_out_on_the_couch i_am_bleeding_money im_bleeding_money i_am_bleeding_cash im_bleeding_cash`,
  clears: [{ needs: 'HEALED' }],
};
