/** Gas: its smell, a line hit or leaking, and lines in the way. */

import type { Lexicon } from '../tables.ts';

/** `smell coming up`: only the smell rises. Counted as a smell, so what is hidden in it stays one. */
export const SMELL_RISES = ['smell', 'smells', 'odor', 'odour', 'stink', 'stench', 'stinks', 'reek', 'whiff']
  .flatMap((smell) =>
    [
      'coming_up',
      'comes_up',
      'came_up',
      'coming_through',
      'coming_out',
      'seeping_up',
      'seeping',
      'rising',
      'wafting_up',
    ].map((rises) => `${smell}_${rises}`),
  )
  .join(' ');

export const GAS: Lexicon = {
  hazard: 'gas',
  classes: {
    EGG: 'egg eggs eggy fart farts cabbage skunk skunky garlic',
    GAS: 'gas gasses gases propane methane butane lpg lp_gas natural_gas nat_gas town_gas',
    EGGS: 'rotten_egg rotten_eggs bad_egg bad_eggs eggy sulfur sulphur sulfury mercaptan gassy',
    SMELL: `smell~ smelt smelly odor~ odour~ stink~ stinks stinky stank stench reek~ whiff~ scent sniff~ aroma smelling smells_like ${SMELL_RISES}`,
    GAS_PART: `gas_line~ gas_pipe~ gas_piping gas_main gas_hose gas_valve gas_connector~ gas_connection gas_fitting gas_meter gas_cock gas_shutoff gas_supply gas_tube gas_tubing gas_feed gas_stub gas_service
      flex_gas_line flexible_gas_line gas_flex_line propane_line propane_pipe propane_tank propane_hose gas_cylinder gas_bottle csst yellow_flex_line yellow_gas_line yellow_flexible_line lp_line gas_inlet gas_riser gas_tap`,
    GAS_THING: `gas_range~ gas_stove~ gas_oven gas_cooktop gas_hob gas_cooker gas_dryer gas_furnace gas_fireplace gas_boiler gas_water_heater gas_heater gas_grill gas_log gas_logs gas_appliance~ gas_insert`,
    BURNER:
      'stove range oven cooktop dryer furnace boiler water_heater heater meter hob burner fireplace grill flexi_hose flex_hose yellow_hose flexi yellow_flexi flexible_hose gas_hose oven_hose pipe_behind_the_stove cooker hotplate aga boiler_pipe regulator',
    HISS: 'hiss~ whistl* sizzl*',
    LEAK: 'leak~ leaky escap* seep~ hissing spew~ flowing venting released whoosh~ pouring coming_out blowing wide_open filling fills pinhole pin_hole hole_in',
    /** The flexible connector by its looks, where nobody calls it gas. */
    YELLOW: `yellow_line~ yellow_pipe~ yellow_piping yellow_hose~ yellow_tube~ yellow_tubing yellow_flex yellow_flexi yellow_connector~ yellow_coated yellow_corrugated yellow_plastic_line yellow_bendy`,
    FLEX: `flex_line~ flex_hose~ flex_pipe~ flex_connector~ flex_tube flex_tubing flexi_line flexible_line~ flexible_hose~ flexible_pipe~ flexible_connector~ flexible_tube flexible_tubing flexible_metal corrugated_line corrugated_hose corrugated_tubing corrugated_connector bendy_hose bendy_pipe bendy_line accordion_hose accordion_line`,
    STOVES: 'stove range oven cooktop cooker hob dryer furnace water_heater boiler fireplace gas',
    LEAK_HEARD: `hiss~ hissing whistl* whoosh~ leak~ leaking leaky hear_it smell~ smells smelling smelly smelt stink~ stinks odor~ reek~ whiff sulfur eggs gassy sizzl*`,
    SMELLS_OFF:
      'smells_off smells_funny smells_weird smells_strange smells_bad smells_wrong smells_odd smell_off smelling_funny smelling_weird funny_smell weird_smell strange_smell odd_smell bad_smell faint_smell stinks reeks whiff hissing hiss',
    SHOVED:
      'kick~ kicked step~ stepped shov* push~ pull~ slid slide~ sliding move~ moved moving drag~ dragged yank~ rolled tug~ tugged bump~ tripped_over kink~ bend~ bent twist~ twisted pinch~ pinched squash~ squashed flatten~ crush~ crushed crimp~ stretch~ nick~ dent~ scrap~ rub~',
    AIR_TOOL: 'compressor air_hose pneumatic nailer air_line garden vacuum hydraulic chalk',
    WATER_THING:
      'water sink toilet dishwasher faucet fridge refrigerator icemaker washer washing_machine tub plumbing vent exhaust duct',
    SAFE_TO: `safe safely dangerous danger risky hazard~ shut shutting turn_off turning_off turned_off disconnect~ disconnecting unhook~ unhooking myself by_myself alone without_a_plumber explode blow_up`,
    SLIDES:
      'slide sliding slid move moving push pushing pull pulling shove shoving roll rolling drag scoot scooting walk_it lift lifting tip get_a get_the get_my get_it_out',
    DETACHES:
      'disconnect~ disconnecting unhook~ unhooking detach~ detaching uncouple~ uncoupling unscrew~ unscrewing hook_up hook_it_up hook_back_up reconnect* undo cap_off',
    GAS_OFF:
      'gas_off the_gas turn_off_gas turn_off_the_gas turn_the_gas shut_off_the_gas shut_the_gas close_the_gas gas_valve gas_shutoff',
    STOVE_ONLY: 'stove range oven cooktop cooker dryer',
    GAS_SURE_MEN:
      'gas_company gas_man gas_guy gas_utility gas_people gas_board utility_company utility_locator~ locator~ 8_1_1 811 call_before_you_dig',
    MARKS_LINES:
      'mark~ marking marked locate~ locating flag~ flagged flagging paint_marks spray_painted trace~ find_the_lines',
    PILOT_LIGHT: 'pilot_light~ pilot_lights pilot pilots pilot_flame',
    GAS_SAYS: 'everywhere strong faint overwhelming emergency lots_of heavy',
    PILOT: 'pilot_light pilot pilot_went_out pilot_is_out pilot_out',
    FUNNY: 'funny weird strange odd bad awful',
    ALARM: 'alarm~ detector~ sensor~ monitor~',
    SOUNDS:
      'going_nuts going_crazy going_wild nuts flashing wont_shut_up wont_quit alerting keep_going going_off went_off goes_off beep~ beeping chirp~ ring~ rang screaming blaring sounding sounded triggered tripped wont_stop keeps_going screeching shrieking alarming is_on chirping keeps',
    GAS_ON:
      'gas_on gas_left_on left_the_gas_on gas_is_on gas_was_on gas_has_been_on gas_still_on left_gas_on gas_wont_shut_off gas_wont_turn_off cant_turn_off_the_gas cant_shut_off_the_gas cant_shut_the_gas_off cant_turn_the_gas_off',
    GAS_WORK:
      'cap~ capping capped move~ moving relocat* reroute~ rerouting extend~ disconnect~ disconnecting unhook~ cut_off cut_through cut_back cut~ cutting remove~ removing replac* repair~ fix~ shorten~ solder~ plug~ touch~ drill~ screw~ nail~',
    GAS_LIES:
      'under below beneath underneath found theres there_is in_the_way in_floor in_the_floor in_the_subfloor runs running exposed buried old hidden joist joists below_the through',
    GAS_MEN:
      'gas_company gas_man gas_guy gas_fitter gasfitter gas_utility gas_tech gas_technician utility utility_company fire_department fire_dept firefighters fitter gas_board gas_engineer gas_people gas_service hvac_tech',
    GAS_CHECKED:
      'checked fixed repaired cleared said_its_safe says_its_safe says_it_is_safe safe tested found_no found_nothing sealed capped replaced turned_off shut_off tightened all_clear gave_the_ok gave_the_all_clear signed_off came_out okayed inspected mended',
    /** A smell of gas that doesn't come from the house's supply. */
    GAS_OTHER: 'car cars truck gasoline can mower tank station fart farts engine generator nailer',
    GAS_WATCHED: 'cooking dinner ran_out_of run_out_of running_out_of low_on stopped_for stop_for',
    GAS_BARE: 'gas_line gas_pipe gas',
    GAS_SNIFFED:
      'smells_of_gas smells_like_gas smell_of_gas gas_smell gas_odor gas_odour gas_leak~ gas_leek~ leaking_gas gas_is_leaking gassy_smell smell_gas smelling_gas smelled_gas',
    GAS_FIXED:
      'gas_leak_fixed gas_leak_repaired gas_leak_was_fixed gas_leak_is_fixed fixed_the_gas_leak repaired_the_gas_leak fixed_the_gas_line gas_line_fixed gas_line_repaired gas_was_checked gas_is_checked gas_checked',
  },
  rules: [
    { level: 'emergency', needs: 'SMELL EGG', within: 6, unless: 'PETS' },
    { level: 'emergency', needs: 'SMELL GAS', within: 6, unless: 'GAS_OTHER' },
    { level: 'emergency', needs: 'SMELL GAS_PART', within: 6 },
    { level: 'emergency', needs: 'SMELL GAS_THING', within: 10 },
    { level: 'emergency', needs: 'EGGS SMELL', within: 6 },
    { level: 'emergency', needs: 'EGGS BURNER', within: 8 },
    { level: 'emergency', needs: 'LEAK GAS', within: 5, unless: 'GAS_OTHER' },
    { level: 'emergency', needs: 'LEAK GAS_PART', within: 7 },
    { level: 'emergency', needs: 'LEAK GAS_THING', within: 6 },
    { level: 'emergency', needs: 'HISS GAS', within: 12 },
    { level: 'emergency', needs: 'HISS GAS_PART', within: 8 },
    { level: 'emergency', needs: 'HISS BURNER', within: 13 },
    { level: 'emergency', needs: 'HIT GAS_PART', within: 5, unless: 'AROUND' },
    { level: 'emergency', needs: 'GAS_ON', unless: 'GAS_WATCHED' },
    { level: 'emergency', needs: 'YELLOW LEAK_HEARD', within: 14, unless: 'AIR_TOOL WATER_THING' },
    { level: 'emergency', needs: 'YELLOW HIT', within: 6, unless: 'AIR_TOOL WATER_THING AROUND' },
    {
      level: 'emergency',
      needs: 'YELLOW SHOVED STOVES',
      within: 14,
      unless: 'AIR_TOOL WATER_THING',
      unlessBefore: 'SUPPOSED',
    },
    { level: 'emergency', needs: 'FLEX LEAK_HEARD STOVES', within: 16, unless: 'AIR_TOOL WATER_THING' },
    { level: 'emergency', needs: 'FLEX SHOVED LEAK_HEARD', within: 14, unless: 'AIR_TOOL WATER_THING' },
    {
      level: 'emergency',
      needs: 'FLEX HIT STOVES',
      within: 12,
      unless: 'AIR_TOOL WATER_THING AROUND',
      unlessBefore: 'SUPPOSED',
    },
    { level: 'emergency', needs: 'SHOVED STOVES SMELLS_OFF', within: 16, unless: 'PETS WATER_THING' },
    { level: 'emergency', needs: 'SHOVED GAS_PART LEAK_HEARD', within: 16 },
    { level: 'emergency', needs: 'SHOVED GAS_THING LEAK_HEARD', within: 16, unless: 'WATER_THING' },
    { level: 'note', needs: 'SAFE_TO SLIDES GAS_THING', within: 12, undeniable: true, about: 'appliance' },
    { level: 'note', needs: 'DETACHES GAS_THING', within: 9, undeniable: true, about: 'appliance' },
    { level: 'note', needs: 'HOW_ASKED SLIDES GAS_THING', within: 14, undeniable: true, about: 'appliance' },
    { level: 'note', needs: 'GAS_OFF SLIDES STOVE_ONLY', within: 16, undeniable: true, about: 'appliance' },
    { level: 'note', needs: 'GAS_SURE_MEN MARKS_LINES', within: 9, about: 'marks' },
    { level: 'note', needs: 'MARKS_LINES GAS_PART', within: 6, about: 'marks' },
    { level: 'note', needs: 'YELLOW STOVES', within: 8, unless: 'AIR_TOOL WATER_THING' },
    { level: 'emergency', needs: 'PILOT SMELL', within: 10 },
    { level: 'emergency', needs: 'GAS ALARM SOUNDS', within: 8 },
    { level: 'emergency', needs: 'GAS GAS_SAYS', within: 4, unless: 'GAS_OTHER' },
    { level: 'emergency', needs: 'GAS_SNIFFED' },
    { level: 'emergency', needs: 'HIT GAS_BARE', within: 4, unless: 'AROUND GAS_OTHER' },
    { level: 'stop', needs: 'GAS_WORK GAS_PART', within: 5, ordered: true, unless: 'AROUND' },
    { level: 'stop', needs: 'GAS_LIES GAS_PART', within: 6 },
    { level: 'stop', needs: 'GAS_PART GAS_LIES', within: 6 },
  ],
  lookalikes: `gas_range~ gas_stove~ gas_oven~ gas_cooktop~ gas_hob~ gas_cooker~ gas_dryer~ gas_furnace~ gas_fireplace~ gas_boiler~ gas_water_heater~ gas_heater~ gas_grill~ gas_log~ gas_appliance~ gas_insert~
    gas_station~ gas_price~ gas_money gas_tank gas_mileage gas_pedal gas_can gas_bill gas_card gas_powered gas_mower gas_generator off_gas off_gassing off_gasses off_gassed out_gassing gas_closet gas_meter_closet
    cost_of_gas price_of_gas tank_of_gas gallon_of_gas gas_engine natural_gas_bill gas_mask laughing_gas tear_gas step_on_the_gas stepped_on_the_gas low_on_gas stop_for_gas stopped_for_gas gas_nailer gas_cartridge propane_torch propane_grill gas_receipt for_gas spent_on_gas`,
  here: 'GAS GAS_PART EGGS',
  clears: [
    { needs: 'GAS_MEN GAS_CHECKED', within: 9 },
    { needs: 'GAS_FIXED' },
    { needs: 'PLUMBERS WATER_FIXED GAS', within: 9 },
    { needs: 'PLUMBERS WATER_FIXED GAS_PART', within: 9 },
  ],
};
