/** Mold, and animal droppings and nests. */

import type { Lexicon } from '../tables.ts';

export const MOLD: Lexicon = {
  hazard: 'mold',
  classes: {
    RUGS: 'rug rugs blanket slippers color colour couch chair',
    GROWS_ON: 'pad carpet subfloor plywood drywall wall~ joist~ wood ply osb sheetrock baseboard~ tack_strip~ underlay',
    MILDEW_GREEN: 'green black',
    FUR: 'fuzzy furry slimy fuzz fur hairy',
    MOLD_OUT: 'cut_out took_out tore_out clearance_test passed clearance replaced',
    PET_STAIN: 'paint painted plank planks pattern pet dog cat urine pee stain ink burn iron rug',
    DARK: 'black green dark grey gray brown white blue_green orange_fuzzy spotted_black black_and_green green_and_black',
    PATCHES:
      'patch~ patches spot~ spots speckle~ speckles speckled dots specks fuzz splotch~ blotch~ blotches spotted bloom',
    ON_MATERIAL:
      'subfloor drywall plywood underside_of_the_carpet back_of_the_carpet under_the_carpet behind_the_base behind_the_baseboard~ wall~ joist~ osb sheetrock carpet_pad underlay underlayment floorboards',
    MOLD: 'mold~ moldy mould~ mouldy mildew~ mildewed mildewy black_mold black_mould toxic_mold fungus fungal fungi spores white_mold green_mold mold_spores moho schimmel moisissure mofo',
    SPOTS:
      'black_spot~ black_dots black_speck~ black_fuzz dark_fuzzy green_spot~ black_patches black_splotches white_fuzz green_fuzz black_stains black_growth gray_fuzz grey_fuzz',
    ON: 'plywood subfloor drywall wall joist~ wood carpet pad tack_strip~ baseboard~ sheetrock osb osb_subfloor underlay underlayment ceiling closet mildew_smell musty damp wet leak',
    FUZZY: 'fuzzy furry hairy slimy cottony powdery',
    GROWTH: 'growth growing stuff spots spot patch~ coating film fur grow~ grew something bloom',
    GROWING:
      'something_growing stuff_growing growing_on_the growing_on_my growing_under_the growth_on_the things_growing fuzz_on_the mushrooms mushroom_growing fuzzy_growth furry_growth white_growth green_growth growing_behind',
    BLACK_SPOTTED: 'black_spots black_stuff_growing black_dots',
    ON_WOOD: 'plywood subfloor drywall joist~ osb wood sheetrock pad tack_strip~',
    MOLD_MEN:
      'remediator remediation remediation_company mold_company mold_remediation restoration_company mold_guy mold_people remediators remediation_crew restoration_crew mold_crew',
    MOLD_GONE:
      'mold_is_gone mold_was_removed mold_has_been_removed mold_removed mold_was_cleaned mold_is_cleaned mold_has_been_cleaned mold_remediated mold_was_treated mold_has_been_treated mold_cleaned_up cleaned_up_the_mold cleaned_the_mold removed_the_mold mold_remediation_done killed_and_removed_the_mold mold_company_cleaned remediator_cleaned remediation_is_done mold_test_negative mold_test_clear tested_negative_for_mold',
    MOLD_OTHER:
      'resistant proof resistance resist profile height stick sticks trim miter mitre reducer transition molding moulding color resin silicone casting inch cove sticks plaster cast made_of',
  },
  rules: [
    { level: 'note', needs: 'DARK FUR GROWS_ON', within: 10, unless: 'RUGS' },
    { level: 'note', needs: 'DARK PATCHES ON_MATERIAL', within: 11, unless: 'PET_STAIN' },
    { level: 'note', needs: 'MOLD', unless: 'MOLD_OTHER' },
    { level: 'note', needs: 'SPOTS ON', within: 8 },
    { level: 'note', needs: 'FUZZY GROWTH', within: 5 },
    { level: 'note', needs: 'GROWING' },
    { level: 'note', needs: 'BLACK_SPOTTED ON_WOOD', within: 6 },
  ],
  lookalikes: `mold_the_caulk mold_the_putty mold_the_filler mold_the_epoxy mold_the_clay base_mold~ crown_mold~ shoe_mold~ t_mold~ tmold quarter_round_mold~ round_mold~ door_mold~ chair_rail_mold~ chair_mold~ bed_mold~ cove_mold~ picture_mold~ panel_mold~ brick_mold~ window_mold~ cap_mold~ reducer_mold~ end_mold~ wall_mold~ floor_mold~ trim_mold~ casing_mold~ corner_mold~ bead_mold~ stop_mold~ base_cap_mold~ threshold_mold~ transition_mold~
    mold_profile~ mold_height mold_resistant mold_proof mold_free mold_trim mold_strip~ mold_color~ mold_to_match mold_nails mold_returns mold_release mold_stick~ mold_piece~ mold_and_trim mold_corner~ mold_miter~ mold_length~ mold_or_reducer mold_or_t mold_is_too_short base_mould~ crown_mould~ shoe_mould~ t_mould~ break_the_mold fits_the_mold fit_the_mold
    nose_mold~ stair_nose_mold~ stairnose_mold overlap_mold~ carpet_mold~ base_shoe_mold~ ogee_mold~ colonial_mold~ mold_ogee doorway_mold~ pine_mold~ mdf_mold~ oak_mold~ white_mold_trim flush_mold~ silicone_mold~ mushroom_color mushroom_gray mushroom_grey mushroom_brown mushroom_gravy mold_room candle_mold~ soap_mold~ baking_mold~ ice_mold~ jello_mold~`,
  clears: [
    { needs: 'MOLD_GONE' },
    { needs: 'MOLD_MEN CLEANED', within: 20 },
    { needs: 'MOLD_MEN MOLD_OUT', within: 22 },
  ],
};

export const MOISTURE_WORDS: Lexicon = {
  hazard: 'moisture',
  classes: {
    AGAIN: 'again retested re_tested retest remeasured re_measured second_test new_readings new_reading new_test',
    READ_NOW: 'read reads reading readings came_in_at came_back measured shows say says now_at',
    DRYING: 'mop mopping saw bar',
    ROOM_AIR: 'outside summer weather room_is air_is',
    MOISTURE_TEST:
      'moisture moisture_meter moisture_reading~ moisture_test~ plastic_sheet plastic_sheet_test plastic_test calcium_chloride mat_test film_test meter_on rh humidity_test moisture_content vapor_emission hygrometer probe_test sheet_test poly_test',
    TOO_WET:
      'wet too_wet too_high too_damp damp failed fails over_the_limit above_the_limit sweating condensation droplets beads_of_water wet_under fogged dark_underneath over_limit way_over out_of_range',
    RH: 'rh humidity relative_humidity',
    BASE: 'slab subfloor sub_floor plywood ply osb concrete_floor wood_below under_the_carpet',
    WET_NOW: 'wet damp moist soaked soggy still_wet still_damp not_dry',
    WET_WORK:
      'saw mop mopping cloth rag sponge vacuum grinding mist primer thinset patch leveler mortar tester meter proof proofing',
    PERCENT: 'percent mc pct',
    SLABBY:
      'slab concrete basement floor subfloor plywood ply osb reads read reading says meter test planks wood joist~',
    DRY_NOW:
      'reads_dry now_dry tested_dry is_dry_now dried_out below_the_limit under_the_limit passed_the_moisture_test within_limits within_the_limit moisture_is_fine_now reading_is_fine readings_are_fine reads_fine test_is_dry dry_under_the_plastic moisture_passed reads_below readings_are_dry its_dry_now',
  },
  rules: [
    { level: 'note', needs: 'MOISTURE_TEST TOO_WET', within: 12, unless: 'DRYING' },
    { level: 'note', needs: 'BASE WET_NOW', within: 6, unless: 'WET_WORK' },
    { level: 'note', needs: 'HIGH_HUMIDITY RH', within: 4, unless: 'ROOM_AIR' },
    { level: 'note', needs: 'HIGH_MOISTURE PERCENT MOISTURE_TEST', within: 12, unless: 'RH' },
  ],
  lookalikes:
    'moisture_barrier~ moisture_resistant moisture_proof humidity_control wet_saw~ wet_mop wet_room wet_bar wet_area~',
  clears: [{ needs: 'DRY_NOW' }, { needs: 'AGAIN READ_NOW LOW_READING', within: 12 }],
};

export const DROPPINGS: Lexicon = {
  hazard: 'droppings',
  classes: {
    WOOD_PELLETS: 'stove wood salt plastic',
    PELLETS_LIE: 'black_pellets little_pellets tiny_pellets rice_sized_pellets little_black_pellets',
    NEST: 'nest~',
    PELLETS: 'pellet~ pellets turds poop droppings little_black black_specks',
    RODENTS:
      'mouse mice rat~ rodent~ bat~ bird~ pigeon~ raccoon~ squirrel~ cockroach~ roach~ chipmunk~ opossum possum vermin starling~',
    THEIRS:
      'dropping~ poop poo pee urine nest~ nesting feces turd~ waste shit crap infestation pellets dead carcass excrement mess filth dirt',
    DROPPINGS:
      'droppings hantavirus hanta guano mouse_dirt mouse_poop rat_poop rodent_waste rat_turds mouse_turds bat_poop mouse_nest rat_nest mouse_droppings dead_rat dead_mouse dead_mice bird_poop',
    WIPED:
      'droppings_are_cleaned droppings_cleaned cleaned_the_droppings cleaned_up_the_droppings droppings_are_gone droppings_were_removed disinfected_the_droppings exterminator_cleaned cleaned_and_disinfected wiped_up_the_droppings droppings_cleaned_up',
  },
  rules: [
    { level: 'note', needs: 'NEST PELLETS', within: 12, unless: 'WOOD_PELLETS' },
    { level: 'note', needs: 'PELLETS_LIE', within: 8, unless: 'WOOD_PELLETS' },
    { level: 'note', needs: 'DROPPINGS' },
    { level: 'note', needs: 'RODENTS THEIRS', within: 20 },
  ],
  lookalikes:
    'computer_mouse mouse_pad mouse_hole_trim rat_tail_file dead_bat rats_nest_of_wires batting bird_cage bird_dog birdcage',
  clears: [{ needs: 'WIPED' }],
};
