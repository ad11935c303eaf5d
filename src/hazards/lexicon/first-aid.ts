/** First aid beyond cuts and falls: the heart, heat, the back, bites, used needles, and burns by wet cement and chemicals. */

import type { Lexicon } from '../tables.ts';

/** Temperatures in °F at which somebody at work overheats. */
const HOT_DEGREES = Array.from({ length: 28 }, (_, i) => 93 + i)
  .flatMap((degrees) => [`${degrees}_degrees`, `${degrees}_in_here`, `${degrees}_out_here`, `${degrees}_outside`])
  .join(' ');

/** `a bit`, `drill bit`: no bite. */
const BITS = [
  'a',
  'little',
  'wee',
  'tiny',
  'drill',
  'spade',
  'router',
  'forstner',
  'hole_saw',
  'driver',
  'every',
  'quite_a',
  'screwdriver',
]
  .flatMap((which) => [`${which}_bit`, `${which}_bits`])
  .join(' ');

export const FIRST_AID: Lexicon = {
  hazard: 'wound',
  classes: {
    // The heart.
    CHEST_OWN:
      'my_chest his_chest her_chest their_chest across_the_chest in_the_chest in_chest dads_chest moms_chest husbands_chest wifes_chest my_breastbone his_breastbone my_sternum upper_chest',
    CHEST_FEELS:
      'tight* pressure pressing heavy heaviness pain pains painful hurt~ hurting ache~ aching squeez* crush* elephant band burning weight flutter* pound* fullness stabbing discomfort vise vice',
    CHEST_OTHER: 'drawer drawers cedar dresser furniture movers move carry vest bench',
    JAW: 'jaw jaws left_arm left_shoulder arm arms down_my_arm down_his_arm down_her_arm shoulder_blades neck',
    LEFT_ARM:
      'left_arm down_my_arm down_his_arm down_her_arm down_my_left down_his_left down_her_left jaw into_my_arm into_his_arm into_her_arm',
    ACHES:
      'ache~ achy aching hurt~ hurts hurting pain pains painful numb tingl* rubbing holding clutching grabbing grabs heavy shooting throb* radiating',
    SORE: 'sore stiff tired',
    SWEATS:
      'sweat~ sweating sweaty clammy drenched cold_sweat cold_sweats pouring_sweat soaked_in_sweat covered_in_sweat short_of_breath winded',
    PALE: 'gray grey grayish greyish ashen pale white_as green',
    WHO: 'he hes she shes i im dad dads mom moms husband wife uncle aunt brother sister grandpa grandma helper buddy friend coworker guy father mother neighbor face skin color lips turned gone went looks looking looked',
    STRAINED:
      'lift~ lifting lifted carry~ carried carrying haul~ hauling hauled lug~ lugging lugged drag~ dragging dragged move~ moving moved heave~ heaved push~ pushing pulling pulled hoist~ hoisted tearing ripping shovel~ wrestling wrestled muscl* climbing',
    // Heat.
    NO_SWEAT:
      'stopped_sweating quit_sweating not_sweating isnt_sweating arent_sweating no_longer_sweating not_sweating_anymore stops_sweating wont_sweat cant_sweat doesnt_sweat hasnt_sweat not_even_sweating sweat_stopped sweating_stopped done_sweating skin_is_hot_and_dry skin_hot_and_dry hot_dry_skin hot_and_dry_skin skin_is_dry_and_hot',
    SWEATS_OTHER: 'pipe~ slab tank toilet window~ concrete duct~ wall~ glass can valve basement line floor',
    OVERHEATED: `this_heat in_the_heat the_heat_all of_the_heat from_the_heat heat_wave heatwave overheat* so_hot too_hot burning_hot really_hot very_hot boiling_hot hot_in_here hot_up_here skin_is_hot skin_hot hot_skin burning_up no_ac no_a_c no_air_conditioning no_air_conditioner sweltering roasting broiling like_an_oven in_the_sun hot_attic hot_garage ${HOT_DEGREES}`,
    MUDDLED:
      'confused confusion not_making_sense isnt_making_sense arent_making_sense doesnt_make_sense makes_no_sense making_no_sense talking_nonsense talks_nonsense talking_gibberish babbl* stumbl* staggering staggers cant_think cannot_think couldnt_think disoriented delirious doesnt_know_where dont_know_where_i incoherent mumbling out_of_it loopy dazed cant_walk_straight cant_stand swaying cramping_all collapsed wobbly',
    HEAT_OF_TOOLS:
      'saw battery drill motor charger laptop phone mat cable heated radiant thermostat gun router compressor plank planks glue calculator instructions',
    // The back.
    BACKS:
      'my_back his_back her_back their_back lower_back low_back back_pain back_strain back_went_out back_gave_out back_gave back_popped back_injury back_spasm~ strained_back spine tailbone husbands_back wifes_back dads_back moms_back slipped_disc slipped_disk herniated',
    LEGS: 'leg legs foot feet toe toes groin crotch saddle thigh thighs inner_thighs butt buttocks between_my_legs between_his_legs below_the_waist waist_down private_parts genitals',
    NUMB: 'numb numbness tingl* cant_feel cannot_feel couldnt_feel dont_feel lost_feeling lost_all_feeling no_feeling weak weakness pins_and_needles dead buckl* wont_hold giving_out give_out drags dragging paralyzed cant_move cannot_move wont_move',
    BLADDER:
      'bladder bowel bowels wet_myself wet_himself wet_herself peed_myself peed_himself peed_herself pissed_myself pissed_himself peeing_myself cant_pee cannot_pee unable_to_pee cant_urinate trouble_peeing hold_my_pee hold_his_pee hold_her_pee cant_hold_it soiled_myself soiled_himself wet_my_pants wet_his_pants incontinent',
    // Bites.
    BIT: 'bit bitten bites bite biting stung nipped',
    BITTEN:
      'me us him her them myself son daughter kid kids child toddler baby boy girl husband wife helper worker dad mom brother sister friend',
    BITE_SAID:
      'bitten_by bit_by_a bit_by_an got_bit got_bitten was_bit was_bitten been_bitten been_bit snakebite snake_bite~ spider_bite~ rat_bite~ bat_bite~ tick_bite~ animal_bite~ dog_bite~ bite_mark~ fang_mark~',
    ANIMAL:
      'snake~ rattlesnake~ rattler copperhead~ cottonmouth moccasin viper rat rats mouse mice bat bats raccoon~ squirrel~ possum opossum skunk fox spider~ black_widow~ widow recluse brown_recluse scorpion~ centipede~ groundhog stray feral critter animal rodent',
    ANIMAL_GETS:
      'got_me got_my got_him got_his got_her got_us struck_me struck_my struck_him struck_her clamped latched bit_my bit_his bit_her bit_our bites_my sank_its scratched_me scratched_my scratched_his scratched_her',
    // Needles.
    SYRINGE: 'syringe~ hypodermic~ needle~ hypo sharps used_needle~ dirty_needle~ insulin_needle~ drug_needle~',
    STUCK_BY:
      'stuck_me stuck_my stuck_by stuck_in_my stuck_in_his stuck_in_her got_stuck stuck_myself stuck_himself stuck_herself i_stuck stuck_him stuck_her poked pokes poke pricked prick jabbed jab stabbed pierced punctured went_into went_in went_through got_me got_my got_him got_his got_her stepped_on kneeled_on knelt_on sat_on broke_the_skin scratched_me scratched_my grabbed needlestick needle_stick',
    NEEDLESTICK: 'needlestick~ needle_stick~ needle_stuck',
    // Burns by what is wet.
    CAUSTIC:
      'cement concrete mortar thinset thin_set grout leveler leveller self_leveler lime stripper acid muriatic lye bleach remover drain_cleaner drain_opener epoxy etcher etching haze_remover resin hardener chemical~ solvent caustic degreaser screed stucco',
    BLISTERS:
      'blister* raw burn~ burned burnt burning chemical_burn~ turning_white turned_white went_white peeling_off eaten_away ulcer* sores oozing welts',
    WORN: 'glove~ boot~ sock~ shoe~ jeans pants kneel~ kneeled knelt kneeling sleeve~ kneepads barefoot',
    BLISTERED: 'blister* raw burns burned burnt sores welts',
    BURN_ASKED: 'does will can could would do',
    // What is found, carried or handled, before anybody is hurt.
    FOUND_AT:
      'carpet pad padding floor flooring subfloor floorboard~ tack_strip tack_strips found find finding vent register closet crawlspace crawl_space dispose disposal throw trash toss pick_up get_rid rental baseboard joist~ insulation tenant tenants basement rug attic',
    WET_CEMENT:
      'leveler leveller self_leveler self_leveling leveling_compound thinset thin_set mortar grout concrete cement patch_compound patching_compound floor_patch screed',
    BARE_SKIN:
      'bare_hand bare_hands barehand* my_hands bare_feet barefoot bare_skin bare_arms bare_knees bare_legs bare_fingers bare_finger my_fingers my_finger without_gloves no_gloves skip_gloves skip_the_gloves skin need_gloves wear_gloves which_gloves what_gloves gloves gloved in_shorts with_fingers in_sandals',
    BARE_OTHER: 'off_my_hands dried wash get_off clean',
    HEAVY_THING:
      'tub bathtub cast_iron clawfoot claw_foot jacuzzi hot_tub gun_safe floor_safe fire_safe a_safe the_safe my_safe our_safe lb_safe lbs_safe pound_safe steel_safe piano~ refrigerator fridge pool_table water_heater treadmill armoire boiler radiator wood_stove woodstove granite countertop aquarium fish_tank washing_machine washer hutch sleeper_sofa 300_lb 400_lb 500_lb 600_lb 800_lb 1000_lb 300_pound 400_pound 500_pound 600_pound 800_pound 1000_pound 300_lbs 400_lbs 500_lbs 600_lbs pallet',
    MOVES_IT:
      'move moving lift lifting carry carrying drag dragging slide sliding tip tipping roll rolling shove shoving push pushing haul hauling raise budge walk_it get_it_out get_a get_the get_my wrestle pull_out pull pick_up scoot',
    ALONE:
      'alone by_myself myself on_my_own one_person single_person one_man single_handed single_handedly singlehandedly solo without_help without_a_helper no_helper no_help just_me only_me by_yourself with_one_person',
  },
  rules: [
    {
      level: 'emergency',
      needs: 'CHEST_OWN CHEST_FEELS',
      within: 9,
      unless: 'CHEST_OTHER PRICE_SEEN PRICE_DID',
      about: 'heart',
    },
    { level: 'emergency', needs: 'CHEST_OWN SWEATS', within: 14, unless: 'CHEST_OTHER PRICE_SEEN', about: 'heart' },
    { level: 'emergency', needs: 'JAW ACHES SWEATS', within: 22, unless: 'PRICE_SEEN', about: 'heart' },
    { level: 'emergency', needs: 'PALE_WHO SWEATS', within: 12, unless: 'SWEATS_OTHER PRICE_SEEN', about: 'heart' },
    { level: 'emergency', needs: 'PALE_WHO JAW ACHES', within: 18, unless: 'PRICE_SEEN', about: 'heart' },
    { level: 'emergency', needs: 'LEFT_ARM ACHES STRAINED', within: 22, about: 'heart' },
    { level: 'note', needs: 'LEFT_ARM SORE STRAINED', within: 22, about: 'heart' },
    { level: 'emergency', needs: 'NO_SWEAT', undeniable: true, unless: 'SWEATS_OTHER', about: 'heat' },
    {
      level: 'emergency',
      needs: 'OVERHEATED MUDDLED',
      within: 24,
      undeniable: true,
      unless: 'HEAT_OF_TOOLS',
      about: 'heat',
    },
    { level: 'emergency', needs: 'BACKS LEGS NUMB', within: 26, undeniable: true, about: 'back' },
    { level: 'emergency', needs: 'STRAINED LEGS_OWN NUMB', within: 18, undeniable: true, about: 'back' },
    { level: 'emergency', needs: 'BACKS BLADDER', within: 26, undeniable: true, about: 'back' },
    { level: 'emergency', needs: 'BIT_WHO', unless: 'SAW_TOOL PRICE', unlessBefore: 'SUPPOSED', about: 'bite' },
    {
      level: 'emergency',
      needs: 'BIT MINE',
      within: 4,
      ordered: true,
      unless: 'SAW_TOOL PRICE',
      unlessBefore: 'SUPPOSED',
      about: 'bite',
    },
    { level: 'emergency', needs: 'BITE_SAID', unless: 'SAW_TOOL PRICE', unlessBefore: 'SUPPOSED', about: 'bite' },
    { level: 'emergency', needs: 'ANIMAL ANIMAL_GETS', within: 16, unlessBefore: 'SUPPOSED', about: 'bite' },
    { level: 'emergency', needs: 'SYRINGE STUCK_BY', within: 12, unlessBefore: 'SUPPOSED', about: 'needle' },
    { level: 'emergency', needs: 'SYRINGE STUCK_BY MINE', within: 12, unlessBefore: 'SUPPOSED', about: 'needle' },
    {
      level: 'emergency',
      needs: 'SYRINGE INTO MINE',
      within: 11,
      ordered: true,
      unlessBefore: 'SUPPOSED',
      about: 'needle',
    },
    { level: 'emergency', needs: 'NEEDLESTICK', unlessBefore: 'SUPPOSED', about: 'needle' },
    {
      level: 'emergency',
      needs: 'CAUSTIC BLISTERS PART',
      within: 24,
      unless: 'IN_EYE',
      unlessBefore: 'SUPPOSED BURN_ASKED',
      about: 'caustic',
    },
    {
      level: 'emergency',
      needs: 'CAUSTIC WORN BLISTERED',
      within: 20,
      unlessBefore: 'SUPPOSED BURN_ASKED',
      about: 'caustic',
    },
    { level: 'note', needs: 'SYRINGE FOUND_AT', within: 14, about: 'needle' },
    {
      level: 'note',
      needs: 'WET_CEMENT BARE_SKIN',
      within: 12,
      undeniable: true,
      unless: 'BARE_OTHER',
      about: 'caustic',
    },
    { level: 'note', needs: 'CAUSTIC BLISTERS PART', within: 18, about: 'caustic' },
    { level: 'note', needs: 'HEAVY_THING MOVES_IT ALONE', within: 16, undeniable: true, about: 'lifting' },
  ],
  joins: {
    /** `he turned gray`, `face is ashen`. */
    PALE_WHO: { needs: 'WHO PALE', within: 4 },
    /** `bit me`, `stung my son`. */
    BIT_WHO: { needs: 'BIT BITTEN', within: 2 },
    LEGS_OWN: { needs: 'WHOSE LEGS', within: 3 },
  },
  lookalikes: `${BITS} bit_of bit_me_in_the bit_by_bit bit_more bit_too bit_off_more bit_my_head bites_my_head bit_his_head bit_her_head bit_our_heads bite_your_head bit_my_ear bitten_by_the bit_by_the_bug the_bug_bit sticker_bit bites_the_dust bite_the_bullet bite_to_eat bite_at_a_time pine_needle~ needle_nose needlenose needle_felt needle_felted needle_punch needle_point needlepoint needle_valve needle_scaler knitting_needle~ sewing_needle~ glue_needle needle_in_a_haystack move_the_needle moves_the_needle needle_tip
    cant_think_of cant_think_why cant_think_what cant_think_how dead_leg table_legs dead_on_my_feet feet_are_dead jaw_horse jaw_dropping jaw_dropped jaw_hit arms_length heavy_hearted get_off_my_back off_my_back behind_my_back pat_on_the_back watch_my_back my_back_yard my_back_door my_back_room my_back_porch my_back_deck my_back_hall my_back_wall my_back_bedroom my_back_entry my_back_stairs snake_the snake_a drain_snake~ plumbing_snake rat_tail rat_race bat_out`,
  clears: [{ needs: 'HEALED' }],
};
