/** Electricity, and fire with its smoke. */

import type { Lexicon } from '../tables.ts';

const LIVELY = [
  'kid',
  'kids',
  'nephew',
  'nephews',
  'niece',
  'nieces',
  'granddaughter',
  'grandchildren',
  'brother',
  'sister',
  'wife',
  'husband',
  'boy',
  'boys',
  'girl',
  'girls',
  'twins',
  'toddler',
  'toddlers',
  'children',
  'grandkids',
  'grandson',
  'son',
  'sons',
  'daughter',
  'puppy',
  'puppies',
  'dog',
  'dogs',
  'cat',
  'cats',
  'he',
  'she',
  'they',
  'hes',
  'shes',
  'theyre',
];
const BE = [
  'is',
  'are',
  'is_a',
  'are_a',
  'a',
  'are_real',
  'is_a_real',
  'are_total',
  'is_a_total',
  'are_such',
  'is_such_a',
  'are_little',
  'is_a_little',
  'are_like',
  'is_like_a',
  'are_absolute',
  'are_both',
  'was_a',
  'were',
];
/** `the kids are live wires`: children and pets as lively as one. */
const LIVE_WIRES = LIVELY.flatMap((who) => [...BE.map((be) => `${who}_${be}_live_wire~`), `live_wire_${who}`])
  .concat('live_wire_of_a')
  .join(' ');

/** `I was shocked at the price`: surprised. */
const SURPRISED = ['was', 'were', 'got', 'am', 'im', 'been', 'still', 'pretty', 'kinda', 'kind_of']
  .flatMap((be) =>
    [
      'at',
      'how',
      'to_see',
      'to_find',
      'to_hear',
      'to_learn',
      'to_read',
      'that_the',
      'by_the_price',
      'by_the_cost',
      'by_the_quote',
      'by_how',
      'when_i_saw',
    ].map((by) => `${be}_shocked_${by}`),
  )
  .join(' ');

export const ELECTRIC: Lexicon = {
  hazard: 'electric',
  classes: {
    IS_LIVE:
      'is_live are_live its_live theyre_live still_live went_live now_live reads_live live_now has_power_in_it energized energised',
    METAL:
      'screw~ nail~ screw_head~ nail_head~ metal radiator pipe~ track strip transition register vent_cover threshold frame saw pan floor',
    TESTER: 'tester voltage_tester meter_reads multimeter non_contact volt_pen voltage_detector',
    TESTER_SAYS: 'lights_up light_up lit_up beeps beep beeping went_off goes_off reads volts voltage glows',
    WIRE: `wire~ wiring cable~ electric_line~ electrical_line~ power_line~ power_cable~ power_cord~ cord~ electric_cable~ electrical_cable~ conduit~ circuit~ electrical extension_cord~ electric_wire~ electrical_wire~ mains nm_cable bx_cable armored_cable knob_and_tube electrical_conduit`,
    OUTLET: `outlet~ socket~ receptacle~ light_switch~ wall_switch switch~ breaker~ breaker_panel electrical_panel electric_panel fuse_box fuse~ breaker_box junction_box~ light_fixture~ floor_box plug~ wall_plug power_point baseboard_heater~ electric_heater~ electric_baseboard
      dimmer gfci gfi power_strip panel_box light_fitting ceiling_fan thermostat electric_stove electric_range doorbell_transformer lamp`,
    SHOCK:
      'shock~ shocked shocking zap~ zapped electrocut* jolt~ jolted buzzed tingle~ tingling tingly electric_shock~ electrical_shock~',
    SHOCKED: `got_shocked got_zapped got_a_shock got_an_electric_shock shocked_me zapped_me zapped_myself shocked_myself getting_shocked get_shocked keep_getting_shocked was_shocked electrocut* gave_me_a_shock gave_me_a_jolt felt_a_shock felt_a_jolt got_a_jolt been_shocked
      shocks_me zaps_me got_electrocuted got_buzzed got_bit_by_a_wire gave_him_a_shock gave_her_a_shock shocked_him shocked_her shock_from a_shock_off shocked_by got_a_tingle get_a_shock got_a_zap i_got_shock got_shock got_lit_up a_zap got_a_bad_shock got_a_nasty_shock got_a_little_shock got_a_mild_shock`,
    CURRENT_SURE: 'outlet~ socket~ wire~ wiring switch breaker touch~ touching plug~ panel cord~ cable~',
    CURRENT_THING:
      'outlet~ wire~ heater switch breaker saw tool drill baseboard floor nail~ screw~ metal touch~ touching pliers pry_bar box plate cover cord machine fridge washer dryer panel radiator vent register staple~ faucet',
    SPARK:
      'spark~ sparked sparking arc~ arced arcing crackl* sizzl* buzz~ buzzing flash~ flashed popped popping_sound humming_loud fizz~ scorch~ scorched singed blue_flash bright_flash pop_and_a_flash spitting sputter~ sputtering',
    EXPOSED:
      'exposed bare live hot frayed damaged loose stripped chewed melted uncapped hanging dangling energized energised unprotected naked hacked severed nicked cut broken crumbling burnt burned scorched pinched crushed sliced open_ended unterminated unmarked cloth_covered brittle',
    LIVE: 'live hot energized energised still_live still_hot',
    LIVE_WORK:
      'cap~ capping splice~ splicing bury~ cover~ move~ moving reconnect* twist~ tape~ touch~ cut~ remove~ removing replac* disconnect~ work_on wire_up rewire~ extend~ tie_off',
    LIGHTS: 'light~ lamp~',
    FLICKER: 'flicker* dim~ dimmed dimming blink~',
    TRIP: `breaker_tripped breaker_trips breaker_keeps_tripping breaker_keeps breaker_tripping tripped_the_breaker trips_the_breaker tripped_a_breaker breaker_wont_reset breaker_popped breaker_pops fuse_blew blew_a_fuse gfci_trips gfci_tripped gfci_keeps trip_the_breaker tripping_the_breaker tripping_breaker
      lost_power no_power power_went_out power_is_out power_out power_went_off power_cut_out lights_went_out lights_are_out lights_went_off lights_dont_work outlets_dont_work outlet_stopped_working outlets_stopped_working outlet_doesnt_work outlet_is_dead outlets_are_dead dead_outlet~ power_died power_gone circuit_is_dead circuit_went_dead half_my_house_lost lights_quit blew_the_breaker breaker_flipped breaker_off_by_itself breaker_went trip_out`,
    FASTENED:
      'nail~ nailing nailed screw~ screwed screwing drill~ staple~ stapled cut into_the_wall into_the_floor fastened drove pried brad~ anchored pulled_up pulling_up sawed',
    WET: 'water wet flood~ flooded leak~ leaking drip~ dripping pouring soaked standing_in puddle rain submerged',
    WIRE_LIES:
      'under below beneath underneath found theres there_is in_floor in_the_floor in_the_subfloor buried across_the_joist~ across_joist~ hidden stapled_to in_the_way runs running between_the_joists',
    WIRE_WORK:
      'screw~ screwing nail~ nailing cut~ cutting drill~ drilling staple~ over where subfloor floor plank~ carpet joist~',
    OLD_WIRING:
      'knob_and_tube aluminum_wiring aluminium_wiring ungrounded_wiring cloth_wiring fabric_wiring cloth_insulated_wire',
    WIRE_OTHER:
      'cover shelf low_voltage ethernet speaker cable_tie heating mat internet tv coax coaxial phone doorbell slot groove chase channel grommet',
    AROUND_WIRE:
      'phone coax ethernet doorbell around for_the for_a for_my near beside past next_to to_fit to_clear along shelf shelves low_voltage to_run to_route so_i_can_run routing channel for_wire for_cable pull_new run_new new_wire cover raceway electrician slot groove chase hole notch pass_through grommet',
    WIRE_BARED:
      'exposed bare live hot frayed damaged loose stripped chewed melted uncapped hanging dangling severed nicked got_cut is_cut was_cut sliced showing sticking_out sticking_up poking_out poking_up in_half is_hot got_hit got_nicked broke not_capped copper_showing',
    STEPPED:
      'step~ stepped stepping walk~ walking screwed nailed since when_i whenever every_time after_i ever_since jump~',
    PROOF: 'proof waterproof resistant cover floor_drain test height',
    WIRE_HOT:
      'hot_wire~ live_wire~ live_cable~ live_electrical live_conductor~ hot_conductor bare_wire~ bare_copper exposed_wire~ exposed_wiring exposed_electrical sparking_wire~ dead_short shorted_out short_circuit shorted wires_touching wires_sticking_out wires_hanging wires_exposed',
    OUTLET_HOT:
      'warm hot_to buzzing burnt scorched melted charred black_marks discolored is_hot getting_hot feels_hot feels_warm smells crackling smells_funny is_warm burning',
    ZAP_ALONE:
      'electrocution electrocuted electrocuting touched_a_wire touched_the_wire touched_a_live grabbed_a_wire grabbed_a_live hand_on_a_live power_line_down downed_line',
    OUTLET_HERE:
      'outlet~ socket~ conduit~ junction~ junction_box~ power electric electrics electricity live spark~ sparked sparking energized energised volt~ voltage current shock~ shocked amp~ mains',
    WIRE_IN:
      'under_the_floor in_the_subfloor in_the_floor under_carpet under_the_carpet under_the_subfloor across_joists where_i_screw where_i_cut where_i_need in_the_joist in_my_way where_i_want below_the_floor under_subfloor in_floor on_top_of_the_joist on_the_joists through_the_joist~ in_the_way',
    JUNCTION:
      'junction_box~ j_box~ jbox~ splice_box~ electrical_box~ electric_box~ wire_box~ wiring_box~ splice~ wire_nut~ octagon_box~ metal_box_with_wires handy_box~',
    COVERED_UP:
      'bury~ buried burying cover~ covered covering hid~ hidden hide under beneath below underneath carpet subfloor floor vinyl plank planks behind closed_up leave inaccessible code access accessible',
    FLOOR_OUTLET:
      'floor_outlet~ floor_receptacle~ floor_box~ floor_boxes floor_plug~ floor_socket~ outlet_in_the_floor outlets_in_the_floor plug_in_the_floor receptacle_in_the_floor outlet_on_the_floor',
    OUTLET_ANY:
      'outlet~ receptacle~ socket~ floor_outlet~ floor_receptacle~ floor_box floor_plug~ floor_socket~ wall_plug outlet_in_the_floor plug_in_the_floor switch wires wire wiring cable',
    CUTS_BY:
      'cut~ cutting saw~ sawing notch~ notching drill~ drilling trim~ undercut~ undercutting jigsaw nail~ nailing screw~ multitool rout~',
    POWER_OFF:
      'breaker~ power live hot circuit electric electricity shut_off turn_off switch_off kill dead safe energized',
    BREAKER_OFF:
      'breaker~ kill_the_power kill_power power_off power_be_off cut_the_power turn_off_the_power turn_off_power turn_the_power_off shut_off_the_power shut_the_power_off flip_off kill_the_circuit shut_off_power trip_the_breaker',
    HEAT_240:
      '240_v 240_volt~ 240v 220_v 220_volt~ 220v 230_v 230_volt~ 208_v 208_volt~ two_forty two_twenty 240 220 high_voltage hard_wired hardwired line_voltage',
    HEATERS:
      'baseboard_heater~ baseboard_heat baseboard_unit~ electric_baseboard~ wall_heater~ heater~ electric_heat toe_kick_heater~ kick_heater~ radiator',
    ELECTRIC_HEATER:
      'baseboard_electric baseboard_electric_heat baseboard_electric_heater~ electric_baseboard~ electric_baseboard_heater~ electric_baseboard_heat electric_heater~ electric_wall_heater~ electric_radiator~ wall_heater~',
    HEATER_WORK:
      'remove_it take_them close near gap clearance under underneath remove~ removing take_off take_it_off taking_off took_off unhook~ unhooking disconnect~ disconnecting unwire rewire~ rehang move moving raise safe melt~ carpet plank planks vinyl flooring floor touch~ off_the_wall',
    BASEBOARD_HEATER: 'baseboard_heater~ baseboard_heat baseboard_heating',
    HEATER_OFF:
      'remove~ removing take_off take_the taking_off took_off unhook~ unhooking disconnect~ disconnecting unwire rewire~ rehang breaker wired hard_wired hardwired wire wires off_the_wall power volt~',
    CIRCUIT_FIXED:
      'wire_was_fixed wire_is_fixed wiring_was_fixed wiring_is_fixed wire_fixed wiring_fixed had_the_wire_fixed had_it_rewired circuit_was_repaired cable_was_replaced wire_was_repaired cable_was_fixed wire_has_been_fixed cable_has_been_fixed wire_is_dead_and_capped outlet_was_replaced outlet_has_been_fixed',
    ELECTRICIANS: 'electrician~ sparky electric_company power_company electrical_contractor electrical_inspector',
    MADE_SAFE:
      'checked fixed repaired replaced cleared safe rewired capped moved disconnected killed_the_circuit made_safe okayed inspected signed_off sorted mended tested relocated pulled_it_out took_it_out',
  },
  rules: [
    { level: 'emergency', needs: 'IS_LIVE METAL', within: 8 },
    { level: 'emergency', needs: 'TESTER TESTER_SAYS', within: 8 },
    { level: 'emergency', needs: 'HIT WIRE', within: 6, unless: 'AROUND_WIRE' },
    { level: 'emergency', needs: 'SHOCKED', unless: 'PRICE_SEEN PRICE_DID' },
    { level: 'emergency', needs: 'SHOCK CURRENT_SURE', within: 7 },
    { level: 'emergency', needs: 'SHOCK CURRENT_THING', within: 7, unless: 'PRICE' },
    { level: 'emergency', needs: 'SPARK OUTLET', within: 8 },
    { level: 'emergency', needs: 'SPARK WIRE', within: 8 },
    { level: 'emergency', needs: 'SPARK FASTENED', within: 9 },
    { level: 'emergency', needs: 'EXPOSED WIRE', within: 3, ordered: true, unless: 'WIRE_OTHER' },
    { level: 'emergency', needs: 'WIRE WIRE_BARED', within: 5, ordered: true, unless: 'WIRE_OTHER' },
    { level: 'emergency', needs: 'LIVE OUTLET', within: 2, ordered: true, unlessBefore: 'SUPPOSED HOW_ASKED' },
    { level: 'note', needs: 'LIVE OUTLET', within: 2, ordered: true, about: 'outlet' },
    { level: 'emergency', needs: 'LIGHTS FLICKER FASTENED', within: 14 },
    { level: 'emergency', needs: 'LIGHTS FLICKER STEPPED', within: 10 },
    { level: 'emergency', needs: 'TRIP FASTENED', within: 14 },
    { level: 'emergency', needs: 'TRIP STEPPED', within: 14 },
    { level: 'emergency', needs: 'WET OUTLET', within: 13, unless: 'PROOF' },
    { level: 'emergency', needs: 'WET WIRE', within: 10, unless: 'PROOF' },
    { level: 'emergency', needs: 'WIRE_HOT', within: 6 },
    { level: 'emergency', needs: 'OUTLET OUTLET_HOT', within: 5 },
    { level: 'emergency', needs: 'LIVE_WORK LIVE WIRE', within: 6 },
    { level: 'emergency', needs: 'ZAP_ALONE' },
    { level: 'note', needs: 'JUNCTION COVERED_UP', within: 10, about: 'box' },
    { level: 'note', needs: 'FLOOR_OUTLET CUTS_BY POWER_OFF', within: 20, undeniable: true, about: 'outlet' },
    { level: 'note', needs: 'OUTLET_ANY CUTS_BY BREAKER_OFF', within: 20, undeniable: true, about: 'outlet' },
    { level: 'note', needs: 'HEAT_240 HEATERS', within: 7, about: 'heater' },
    { level: 'note', needs: 'ELECTRIC_HEATER HEATER_WORK', within: 12, undeniable: true, about: 'heater' },
    { level: 'note', needs: 'BASEBOARD_HEATER HEATER_OFF', within: 10, undeniable: true, about: 'heater' },
    { level: 'stop', needs: 'WIRE_LIES WIRE', within: 5, unless: 'WIRE_OTHER' },
    { level: 'stop', needs: 'OLD_WIRING' },
    { level: 'stop', needs: 'WIRE WIRE_IN', within: 6, ordered: true, unless: 'WIRE_OTHER' },
  ],
  lookalikes: `${LIVE_WIRES} ${SURPRISED} shorted_myself shorted_me shorted_us shorted_my_order shorted_our_order shorted_the_order total_live_wire~ absolute_live_wire~ little_live_wire~ real_live_wires regular_live_wires hot_deal~ red_hot_deal~ red_hot_price~ red_hot_sale~ hot_price~ hot_sale~ hot_item~ hot_seller~ smoking_good smoking_price smoking_discount
    wire_shelf wire_shelves wire_shelving wire_rack~ wire_basket~ wire_brush~ wire_mesh wire_lath wire_gauge wire_cutter~ wire_coat_hanger wire_hanger~ wire_frame chicken_wire picture_wire hardware_cloth wire_fence wire_closet wire_wheel wire_glass wire_closet_shelf
    cable_cover~ cable_tie~ cable_tv cable_channel~ cable_raceway~ cable_guy cable_management cable_box cable_company cable_bill cable_internet tv_cable cable_modem cable_clip~ cable_knit cable_railing cable_rail
    structured_wiring wiring_closet cord_cover~ corded cordless cord_of_wood cord_free floor_cord_cover chalk_line_cord live_edge live_in live_here live_there live_with live_on live_oak live_wall live_room live_chat live_load~ live_without live_upstairs live_downstairs live_alone live_near
    shock_absorbing shock_absorber~ shock_absorption shock_absorbent shock_proof shock_pad sticker_shock price_shock in_shock_at shocked_at shocked_how shocked_to shocked_that shocking_price culture_shock static_shock~ static_electricity shock_resistant shock_value after_shock thermal_shock
    spark_some spark_joy spark_plug~ spark_ideas spark_an_idea circuit_board short_circuit_the electric_stapler electric_bill electric_car light_oak light_color~ light_gray light_grey light_wood light_brown flash_cove flash_sale flash_patch arc_of hot_glue hot_mess hot_tub hot_water hot_wire_foam power_cut_saw bare_wood bare_floor~ bare_concrete
    electrical_room electrical_closet electric_room electrical_outlet_cover outlet_cover~ switch_plate~ outlet_plate~ outlet_mall outlet_store outlet_height switch_to switch_from switch_over switch_between plug_cutter wood_plug~ dowel_plug~ screw_plug~ switch_back switch_it switch_out switch_the_direction switch_direction switch_rooms switch_colors switch_planks ear_plug~
    loose_cable_cover lamp_table lamp_oil circuit_training barbed_wire_look guide_wire wire_staples barb_wire heating_cable~ heat_cable~ speaker_cable~ speaker_wire~`,
  here: 'WIRE OUTLET_HERE',
  clears: [{ needs: 'ELECTRICIANS MADE_SAFE', within: 9 }, { needs: 'CIRCUIT_FIXED' }],
};

/** `she's on fire`: in flames, or quick at work; only the words around tell which. */
const ON_A_ROLL = [
  ...LIVELY,
  'i',
  'we',
  'you',
  'team',
  'crew',
  'guy',
  'guys',
  'helper',
  'buddy',
  'dad',
  'mom',
  'partner',
]
  .flatMap((who) => ['is', 'are', 'am', 'was', 'were', 'has_been', 'have_been'].map((be) => `${who}_${be}_on_fire`))
  .concat(
    [
      'im',
      'hes',
      'shes',
      'were',
      'theyre',
      'youre',
      'weve_been',
      'ive_been',
      'hes_been',
      'shes_been',
      'dads',
      'moms',
      'wifes',
      'husbands',
      'crews',
      'kids',
    ].map((who) => `${who}_on_fire`),
  )
  .join(' ');

export const FIRE: Lexicon = {
  hazard: 'fire',
  classes: {
    HOT_OTHER: 'hot_glue hot_day outside weather',
    BATTERY: 'battery batteries battery_pack charger lithium',
    BATTERY_HURT: 'swell~ swelling swollen bulg* hot hissing smok~ smoking melting burning popped',
    PERSON_FIRE: ON_A_ROLL,
    FIRE_MOOD:
      'today lately this_week this_weekend tonight this_morning rooms rows row done finished already laid laying planks streak roll ahead schedule fast speed quick pace awesome great go_us go_team sq square boxes so_far math numbers miters cuts crew proud',
    CHARS: 'char charring charred glow glowing glows red_hot',
    CHARS_AT: 'wall stud~ trim floor subfloor outlet joist~ wood baseboard insulation plank carpet',
    BURNING: `burning_smell smells_burnt smells_burned smell_burnt smells_burning smell_burning smell_of_burning smells_like_burning smells_like_its_burning smells_like_something_burning smell_something_burning burnt_smell burning_plastic burnt_plastic burning_odor burning_rubber burning_wires smell_like_burning
      smelling_burning smells_like_burnt smells_like_smoke smell_like_smoke smells_smoky smelled_burning smelled_smoke smelling_smoke hot_plastic_smell melting_plastic electrical_smell electric_smell acrid_smell fishy_smell_from_the_outlet smells_hot burning_wood_smell smells_like_burned smells_scorched`,
    SMOKES:
      'smok~ smoke smokes smoking smoked burn~ burning burnt melt~ melting glowing glow overheat* scorch~ scorching hot_to_touch hot_to_the_touch swelling swollen hissing sparking char~ charring charred glows smouldering smoldering',
    SMOKES_AT:
      'outlet~ switch~ panel breaker~ wire~ wiring plug~ battery batteries charger dust_bag rags wall dust_collector extension_cord cord heater fixture',
    OLD_SMOKE:
      'cigarette~ cigar~ tobacco smoker~ owner~ tenant~ vape weed nicotine seal sealing primer paint_over previous carpet_pad years remove_the get_rid',
    FIRE_SURE:
      'on_fire caught_fire caught_on_fire catching_fire in_flames up_in_flames house_fire electrical_fire grease_fire ablaze burst_into_flame burst_into_flames something_is_burning something_burning lit_on_fire set_on_fire starting_to_burn smoldering smouldering fire_broke_out started_a_fire put_out_a_fire rags_caught sawdust_caught flames_coming flame_shooting carpet_is_burning floor_is_burning wall_is_burning fire_help help_fire fire_spreading',
    FIRE_GIVEN:
      'there_is_a_fire theres_a_fire theres_fire small_fire big_fire a_little_fire fire_in fire_on_the fire_under fire_behind fire_started started_fire trash_fire fire_in_the flames embers fire_now fire_coming fire_wont_go_out set_fire_to put_out_the_fire burning_inside',
    HEARTH:
      'fireplace hearth wood_stove woodstove pit campfire marshmallow~ cozy insert mantel chimney sit sitting color look gas_fireplace',
    SMOKE_SEEN:
      'smoke_coming smoke_pouring smoke_from smoke_is smoke_in_the smoke_everywhere smoke_filling full_of_smoke filled_with_smoke see_smoke seeing_smoke saw_smoke theres_smoke there_is_smoke smoke_out_of smoke_behind smoke_under smoke_rising smell_smoke smell_of_smoke black_smoke smoke_started smoke_now smoke_starting started_smoking starting_to_smoke starts_smoking began_smoking begun_to_smoke smoke_inside lots_of_smoke a_lot_of_smoke wisp_of_smoke wisps_of_smoke smelled_smoke smelling_smoke',
    SAW_BLADE: 'blade miter_saw table_saw circular_saw saw_blade sawblade dull router jigsaw bit',
    SMOKE_ALARM: 'smoke_alarm~ smoke_detector~ fire_alarm~',
    ALARM_OTHER:
      'clock door car burglar phone moisture stud leak meter laser level tool batteries watch fridge freezer low_battery',
    BURN_OTHER:
      'saw blade router sander cut cuts cutting drill bit wood_stove burner candle kitchen_oven edges ends miter laser sanding cds cd calories',
    FIRE_OUT:
      'fire_is_out put_it_out fire_was_out its_out fire_out extinguished fire_department_came fire_department_checked fire_department_cleared firefighters_cleared firefighters_checked false_alarm fire_dept_cleared fire_dept_checked fire_department_said fire_marshal_cleared',
  },
  rules: [
    { level: 'emergency', needs: 'BATTERY BATTERY_HURT', within: 9, unless: 'HOT_OTHER' },
    { level: 'emergency', needs: 'FIRE_SURE' },
    { level: 'emergency', needs: 'PERSON_FIRE', unless: 'FIRE_MOOD' },
    { level: 'emergency', needs: 'CHARS CHARS_AT', within: 12 },
    { level: 'emergency', needs: 'FIRE_GIVEN', unless: 'HEARTH' },
    { level: 'emergency', needs: 'BURNING', unless: 'OLD_SMOKE BURN_OTHER' },
    { level: 'emergency', needs: 'SMOKE_SEEN', unless: 'OLD_SMOKE SAW_BLADE' },
    { level: 'emergency', needs: 'SMOKES SMOKES_AT', within: 9, unless: 'BURN_OTHER' },
    { level: 'emergency', needs: 'SMOKE_ALARM SOUNDS', within: 7 },
    { level: 'emergency', needs: 'ALARM SOUNDS', within: 5, unless: 'ALARM_OTHER' },
  ],
  lookalikes: `${ON_A_ROLL} deal_is_on_fire sale_is_on_fire fire_place~ fireplace~ fire_engine fire_truck fire_red fire_rated fire_rating fire_door~ fire_caulk fire_code fire_block fire_blocking fire_stop fire_stopping fire_sale fire_pit~ fire_wall fire_extinguisher~ fire_retardant fire_resistant fire_proof fire_sprinkler~ fire_brick fire_up fire_away fire_escape fire_stairs fire_hydrant fire_station
    camp_fire bon_fire by_the_fire front_of_the_fire fire_the fire_my fire_him fire_wood fire_hose fire_tv fire_stick fire_pole fire_damage fire_sealant fire_hazard fire_class fire_clay fire_glazed fire_opal surefire
    smoke_gray smoke_grey smoke_color~ smoke_oak smoked_oak smoky_oak smoked_glass smoky_gray smoke_white white_smoke_color smoke_show smoke_break smoke_damage smoke_free smoke_test_the holy_smokes smoke_signal smokes_oak light_smoke dark_smoke smoke_ash blue_smoke_color
    burning_question wood_burning wood_burning_stove burn_mark~ burnt_orange burnt_umber burnt_sienna burn_through burning_a_hole burn_rate slow_burn money_to_burn burn_out burned_out burnt_out burning_daylight burn_calories burning_through burn_the_ends burn_pile burning_out burning_money
    alarm_clock alarm_contact~ alarm_company alarm_sensor_on_the_door alarm_panel stud_detector~ stud_sensor metal_detector cable_detector pipe_detector wire_detector leak_detector moisture_detector false_alarm~ set_an_alarm alarm_system burglar_alarm car_alarm phone_alarm door_alarm set_the_alarm alarming_price alarmed_at motion_detector motion_sensor
    hot_to_trot battery_saw_hot no_smoking non_smoking quit_smoking smoking_room smoking_deal smoking_hot smoking_jacket`,
  clears: [{ needs: 'FIRE_OUT' }, { needs: 'ELECTRICIANS MADE_SAFE', within: 9 }],
};
