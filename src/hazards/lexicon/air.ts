/** Air: carbon monoxide, fumes of solvents and glues, and cleaners that must not be mixed. */

import type { Lexicon } from '../tables.ts';

export const CARBON_MONOXIDE: Lexicon = {
  hazard: 'carbon-monoxide',
  classes: {
    FUMES_STRONG_SAID: 'stripper primer thinner solvent glue adhesive paint',
    CO_WORD: 'co',
    PPM: 'ppm parts_per_million',
    BEEPS: 'beep~ beeping chirp~ chirping sounding blaring going_off',
    FLUE: 'flue~ flue_pipe exhaust_pipe vent_pipe chimney_pipe draft_hood furnace_vent boiler_vent vent_duct',
    FLUE_OFF:
      'off loose disconnected knocked fell_off came_off crushed blocked cracked separated broke broken taped tape_it dented apart unhooked detached',
    BURNS:
      'kerosene_heater~ diesel_heater~ furnace boiler heater gas_heater water_heater flue stove_pipe kerosene generator propane gas_fire wood_stove fireplace woodstove',
    DROWSY:
      'sleepy drowsy groggy headache~ dizzy dizziness nauseous nausea sick_to lightheaded light_headed woozy confused head_hurts flushed faint',
    CO: 'carbon_monoxide monoxide co_alarm~ co_detector~ co_monitor~ co_sensor carbon_alarm carbon_detector co_poisoning co_level~ co_reading~ co_ppm carbon_monoxide_alarm carbon_monoxide_detector co_meter~ co_tester co_reader',
    CO_SAYS: 'high poisoning exposure rising ppm leak~ exhaust fumes symptoms',
    ENGINE:
      'generator charcoal kerosene_heater propane_heater gas_heater torpedo_heater salamander_heater car_running engine_running barbecue bbq camp_stove car_engine gas_generator hibachi grill_inside propane_torch_heater diesel_heater gas_powered_saw gas_saw gas_powered gas_engine~ gas_cutoff_saw cutoff_saw cut_off_saw demo_saw quickie_saw gas_concrete_saw gas_power_washer gas_pressure_washer power_washer pressure_washer power_trowel gas_compressor generators kerosene_heaters propane_heaters forced_air_heater salamander propane_buffer propane_burnisher small_engine unvented_heater buddy_heater patio_heater construction_heater',
    CO_CHECKED:
      'checked cleared aired_out fixed repaired no_reading reading_zero found_no found_nothing all_clear serviced safe reads_zero reads_0',
    CO_NAMED: 'carbon_monoxide monoxide',
    CO_ILL:
      'headache~ head_ache head_aches splitting_head head_hurts heads_hurt heads_are_pounding head_is_pounding sleepy sleepiness drowsy groggy confused confusion foggy woozy dizzy dizziness nauseous nausea queasy lightheaded light_headed cant_think cannot_think cant_stay_awake cant_keep_my_eyes cant_wake wont_wake_up hard_to_wake weak flushed fainted passed_out throwing_up threw_up vomit~ vomiting sick out_of_it disoriented slurring stumbl* cherry_red',
    QUIET: 'quiet batteries battery new_alarm installed',
    RUNS: 'run~ running using use~ used on started keeps going heat~ heating dry~ drying cook~ cut~ cutting burn~ burning',
    ENGINE_ASKED:
      'do_you_need should_i can_i can_you can_we is_it will_a would_a does_a could_a should_a may_i how_long_can bad_to need_to',
    OUTSIDE: 'outside outdoors driveway yard electric_start',
    FURNACE_MEN: 'hvac hvac_tech hvac_guy furnace_tech furnace_guy technician',
    EXPOSED_TO: 'poisoned exposed breathing breathed smell',
  },
  rules: [
    { level: 'emergency', needs: 'CO_WORD BEEPS', within: 14, unless: 'QUIET' },
    { level: 'emergency', needs: 'PPM ALARM', within: 8 },
    { level: 'emergency', needs: 'FLUE FLUE_OFF', within: 7 },
    { level: 'emergency', needs: 'BURNS DROWSY', within: 18, unless: 'FUMES_STRONG_SAID' },
    { level: 'emergency', needs: 'CO SOUNDS', within: 8 },
    { level: 'emergency', needs: 'CO CO_SAYS', within: 6 },
    { level: 'emergency', needs: 'CO SYMPTOM', within: 14 },
    { level: 'emergency', needs: 'ENGINE SYMPTOM', within: 16 },
    { level: 'emergency', needs: 'ENGINE CO_ILL', within: 26, undeniable: true },
    {
      level: 'emergency',
      needs: 'ENGINE INSIDE RUNS',
      within: 10,
      unless: 'OUTSIDE',
      unlessBefore: 'SUPPOSED ENGINE_ASKED',
    },
    { level: 'note', needs: 'ENGINE INSIDE RUNS', within: 14, about: 'engine' },
    { level: 'note', needs: 'ENGINE INSIDE ENGINE_ASKED', within: 18, undeniable: true, about: 'engine' },
    { level: 'note', needs: 'ENGINE INSIDE HOW_ASKED', within: 18, undeniable: true, about: 'engine' },
    { level: 'emergency', needs: 'CO EXPOSED_TO', within: 6 },
    { level: 'note', needs: 'CO_NAMED', unless: 'QUIET' },
  ],
  lookalikes:
    'kerosene_heater~ diesel_heater~ co_worker~ co_op co_owner~ co_pilot co_signer~ carbon_footprint carbon_fiber carbon_steel carbon_copy carbon_filter carbon_blade carbon_paper',
  clears: [
    { needs: 'GAS_MEN CO_CHECKED', within: 9 },
    { needs: 'FURNACE_MEN CO_CHECKED', within: 9 },
  ],
};

export const FUMES: Lexicon = {
  hazard: 'fumes',
  classes: {
    WASH: 'water wash washing soapy damp',
    RAG: 'rag~ cloth~ paper_towels steel_wool',
    HEATS: 'smok~ smoking smolder~ smoulder~ hot warm steaming heating',
    FUMES: `sealing priming painting staining varnishing gluing refinishing stripping fume~ vapor~ vapour~ solvent~ thinner~ mineral_spirits white_spirit paint_thinner acetone xylene toluene naphtha turpentine turps denatured_alcohol lacquer shellac stripper~ adhesive_remover mastic_remover glue_remover
      contact_cement contact_adhesive spray_adhesive spray_foam polyurethane poly varnish epoxy adhesive~ glue~ primer~ sealer~ finish chemical~ odor~ smell~ paint_smell offgassing off_gassing voc_smell floor_finish urethane stain_blocker two_part
      caulk construction_adhesive oil_paint sealant formaldehyde degreaser goo_remover remover methylene_chloride`,
    STRONG: `solvent~ thinner mineral_spirits white_spirit paint_thinner acetone xylene toluene naphtha turpentine denatured_alcohol lacquer shellac stripper~ adhesive_remover mastic_remover glue_remover contact_cement contact_adhesive gasoline petrol
      fume~ vapor~ vapour~ oil_primer oil_based_primer oil_based flammable~ methylene_chloride spray_foam lacquer_thinner paint_stripper varnish spray_adhesive shellac_primer diesel kerosene lighter_fluid oil_paint polyurethane`,
    FLAME: `pilot_light pilot pilot_lights open_flame flame~ candle~ cigarette~ smoking_a spark~ lit furnace gas_stove stove_on heat_gun torch water_heater gas_water_heater space_heater gas_range gas_furnace gas_dryer gas_heater match~ lighter burner woodstove wood_stove boiler heater kerosene_heater~ diesel_heater~`,
    SYMPTOM: `dizzy dizziness lightheaded light_headed headache~ head_aches head_ache nausea nauseous nauseated queasy woozy loopy vomit~ vomiting throwing_up threw_up throw_up puking puked wheez* cough~ coughing feel_sick feeling_sick feels_sick felt_sick making_me_sick makes_me_sick
      got_sick made_me_sick made_him_sick made_her_sick getting_sick sick_from feel_drunk feel_high head_hurts head_is_pounding head_is_spinning head_spinning throat_burns throat_burning throat_hurts burning_throat eyes_burning eyes_burn eyes_watering eyes_sting short_of_breath cant_breathe
      hard_to_breathe trouble_breathing difficulty_breathing passed_out pass_out passing_out fainted feel_funny feel_weird feel_off feeling_off feel_faint tight_chest chest_tight blurry_vision feel_ill taken_ill unwell lungs_burn lungs_burning lungs_hurt nose_burns nose_burning
      feel_terrible feel_awful knocked_me_out see_stars seeing_double head_is_swimming heads_swimming head_swimming head_swims acting_drunk acting_funny acting_weird acting_strange cant_hardly_breathe can_hardly_breathe can_barely_breathe cant_catch my_breath chest_burns throat_is_raw throat_raw eyes_stream eyes_streaming cant_stop_coughing nearly_fell_over slurring giddy tipsy throat_is_burning`,
    SICK: 'sick',
    SHUT: `closed windows_shut windows_closed window_shut window_closed no_ventilation without_ventilation no_windows unventilated closed_room poorly_ventilated no_fresh_air no_airflow closet crawl_space crawlspace sealed_room small_bathroom tiny_bathroom basement_with_no shut all_closed windows_painted_shut dont_open no_fan without_a_fan winter_closed cant_open`,
    HARMFUL: `toxic dangerous harmful poisonous pregnant pregnancy baby newborn infant toddler asthma overnight sleep~ sleeping respirator ventilate~ ventilation ventilating explode~ explosive ignite~ flammable catch_fire breathe~ breathing inhal* safe_to_breathe`,
    /** Asked before it is done. */
    FLAME_ASKED:
      'a_problem a_concern if_i if_we do_pilot do_the_pilot does_the_pilot does_a_pilot does_my_pilot should_the_pilot can_the_pilot has_to_be have_to_be need_to_be needs_to_be must_i must_the how_far how_close matter matters bad_idea good_idea before_i before_we before_using do_i_need do_i_have should_i_turn should_i_shut when_using',
    RAGS: 'oily_rag~ oil_rag~ oil_soaked_rag~ stain_rag~ linseed_rag~ rag_pile rags_in_a_pile pile_of_rags rags_soaked linseed_oil oily_cloth~ solvent_rag~ greasy_rag~ stain_soaked finish_rag~ rags_full_of',
    MASK_SAID:
      'mask~ respirator~ n95 p100 n_95 p_100 dust_mask~ paper_mask~ cartridge~ organic_vapor no_mask without_a_mask',
    CONTACT: 'contact_cement contact_adhesive contact_glue neoprene_glue rubber_cement spray_adhesive',
    CONTACT_LONG:
      'hours hour all_day all_morning all_afternoon all_night how_long break breaks ventilat* airflow fan fans safe dangerous breathe breathing indoors window windows',
    RAGS_HOT: 'hot smok* warm smolder~ heating_up',
    FRESH:
      'aired_out aired_it_out ventilated fresh_air feel_fine feeling_fine feel_better feeling_better felt_better smell_is_gone fumes_are_gone fumes_gone pilot_is_off pilot_off turned_off_the_pilot flame_is_out all_better ok_now fine_now better_now',
    NO_FUMES: 'dust_only',
    AFTER_OFF: 'pilot_off turned_off_the_pilot shut_off_the_pilot unplugged',
    FUMES_SAID:
      'fumes vapors vapours off_gassing solvent_smell chemical_smell chemical_odor chemical_odour primer_smell adhesive_smell glue_smell paint_fumes primer_fumes adhesive_fumes glue_fumes stripper_fumes solvent_fumes contact_cement_fumes',
    FUMES_SURE:
      'stripper_fumes contact_cement_fumes adhesive_fumes solvent_fumes glue_fumes primer_fumes paint_fumes lacquer_fumes thinner_fumes chemical_fumes epoxy_fumes shellac_fumes sealer_fumes polyurethane_fumes finish_fumes',
    FUMES_LIE: 'strong bad everywhere basement closet house room kids children dog pets birds heavy overwhelming',
    GLUES: 'glue~ gluing glueing adhesive~ primer~ finish epoxy sealer~ fume~ remover~ poly polyurethane mastic cement',
  },
  rules: [
    { level: 'emergency', needs: 'RAG HEATS', within: 14, unless: 'WASH', about: 'flame' },
    { level: 'emergency', needs: 'FUMES SYMPTOM', within: 14, unless: 'NO_FUMES', about: 'ill' },
    { level: 'emergency', needs: 'STRONG SICK', within: 10, about: 'ill' },
    { level: 'emergency', needs: 'FUMES_SAID SICK', within: 10, about: 'ill' },
    { level: 'emergency', needs: 'STRONG FLAME', within: 12, unless: 'AFTER_OFF FLAME_ASKED', about: 'flame' },
    { level: 'emergency', needs: 'RAGS RAGS_HOT', within: 6, about: 'flame' },
    { level: 'note', needs: 'STRONG FLAME', within: 12 },
    { level: 'note', needs: 'PILOT_LIGHT GLUES', within: 16 },
    { level: 'note', needs: 'STRONG SHUT', within: 12 },
    { level: 'note', needs: 'STRONG HARMFUL', within: 12 },
    { level: 'note', needs: 'STRONG MASK_SAID', within: 14, about: 'mask' },
    { level: 'note', needs: 'CONTACT CONTACT_LONG', within: 14, about: 'mask' },
    { level: 'note', needs: 'RAGS', about: 'rags' },
    { level: 'note', needs: 'FUMES_SURE' },
    { level: 'note', needs: 'FUMES_SAID HARMFUL', within: 10 },
    { level: 'note', needs: 'FUMES_SAID ASKING', within: 5 },
    { level: 'note', needs: 'FUMES_SAID FUMES_LIE', within: 8 },
  ],
  lookalikes:
    'vapor_barrier~ vapour_barrier~ vapor_retarder~ vapor_emission~ vapor_permeable vapor_drive water_vapor water_vapour moisture_vapor vapor_test~ vapor_block stripper_pole sick_of sick_and_tired sick_look sick_deal flame_retardant spark_plug heat_gun_nozzle what_a_headache headache_of headache_free faint_lines faint_stripe price_sticker_remover safety_match',
  clears: [{ needs: 'FRESH' }],
};

export const CLEANERS: Lexicon = {
  hazard: 'cleaners',
  classes: {
    THEN: 'then after afterwards followed_by on_top_of with plus together',
    BLEACH: 'bleach~ bleaching chlorine hypochlorite pool_shock chlorinated chlorine_bleach bleach_water',
    NOT_WITH_BLEACH: `ammonia ammonium urine pee peed piss cat_pee dog_pee cat_urine dog_urine pet_urine litter_box vinegar acid acids muriatic acidic toilet_bowl_cleaner toilet_cleaner rust_remover lime_remover descaler hydrochloric phosphoric
      lemon_juice citric peroxide rubbing_alcohol isopropyl drain_cleaner drain_opener lye oven_cleaner window_cleaner glass_cleaner other_cleaner another_cleaner enzyme_cleaner grout_haze_remover`,
    AMMONIA: 'ammonia ammonium',
    MIXED:
      'mix~ mixed mixing mixture poured pour sprayed spraying used put added adding splashed dumped combined together threw mopped scrubbed cleaned sprinkled soaked spilled have_been',
    TOXIC_GAS: 'chlorine_gas chloramine~ mustard_gas toxic_gas poison_gas green_gas yellow_gas toxic_fumes',
    CHEMICALS: 'cleaner~ chemical~ cleaning_product~ cleaning_chemical~ drain_cleaner acid',
    MAY_I:
      'can_i can_you can_we should_i should_you may_i is_it ok_to okay_to safe_to could_i could_you will_it would_it does_it what_if how_do_i how_to kill~ remove~ get_rid_of best_way before_priming before_sealing going_to gonna want_to wanna planning thinking dont never',
    RINSED: 'rinsed_it rinsed_off rinsed_out rinsed_away rinsed_with_water mopped_it_up flushed_with_water',
  },
  rules: [
    { level: 'emergency', needs: 'BLEACH NOT_WITH_BLEACH THEN', within: 12, unless: 'MAY_I RINSED' },
    { level: 'emergency', needs: 'BLEACH NOT_WITH_BLEACH MIXED', within: 14, unless: 'MAY_I' },
    { level: 'emergency', needs: 'BLEACH NOT_WITH_BLEACH SYMPTOM', within: 20 },
    { level: 'emergency', needs: 'BLEACH SYMPTOM', within: 14 },
    { level: 'emergency', needs: 'MIXED CHEMICALS SYMPTOM', within: 18 },
    { level: 'emergency', needs: 'TOXIC_GAS' },
    { level: 'emergency', needs: 'AMMONIA SYMPTOM', within: 14 },
    { level: 'stop', needs: 'BLEACH NOT_WITH_BLEACH', within: 14 },
  ],
  lookalikes: 'bleached_oak bleached_wood bleached_look bleached_pine bleach_color bleached_maple acid_wash acid_stain',
  clears: [{ needs: 'FRESH' }, { needs: 'RINSED' }],
};
