/** Load-bearing framing, holes someone could fall through, post-tension cables in a slab, and heat in a floor. */

import type { Lexicon } from '../tables.ts';

const PANELS = [
  'panel',
  'panels',
  'plywood',
  'ply',
  'subfloor',
  'subfloors',
  'sub_floor',
  'osb',
  'particle_board',
  'particleboard',
  'chipboard',
  'sheet',
  'sheets',
  'sheathing',
  'deck',
  'decking',
];
const BELOW = ['under', 'below', 'beneath', 'underneath'];
/** `under the plywood`: where the framing is. */
const UNDER_PANEL = BELOW.flatMap((below) =>
  ['', 'the_', 'my_', 'our_', 'that_', 'this_', 'old_', 'the_old_'].flatMap((the) =>
    PANELS.map((panel) => `${below}_${the}${panel}`),
  ),
).join(' ');

const SOUND = [
  'sound',
  'solid',
  'dry',
  'fine',
  'good',
  'ok',
  'okay',
  'hard',
  'intact',
  'undamaged',
  'healthy',
  'great',
  'perfect',
];
/** `joists are solid`: then the rest of the sentence isn't about them. */
const SOUND_FRAME = ['joist', 'joists', 'beam', 'beams', 'framing']
  .flatMap((frame) =>
    [
      '',
      'is_',
      'are_',
      'look_',
      'looks_',
      'feel_',
      'feels_',
      'seem_',
      'seems_',
      'all_',
      'still_',
      'are_all_',
      'are_still_',
      'all_look_',
    ].flatMap((is) => SOUND.map((sound) => `${frame}_${is}${sound}`)),
  )
  .join(' ');

export const STRUCTURE: Lexicon = {
  hazard: 'structure',
  classes: {
    NO_CUT: 'plank planks subfloor plywood trim',
    BOUNCES: 'bounc* springy sag~ saggy',
    DIP: 'dip~ dips dipped low lower drops_off drop_off slopes slope sloping out_of_level falls_away',
    INCHES:
      'two_inches 2_inches 2_in three_inches 3_inches 3_in four_inches 4_inches inch_and_a_half 1_1/2_inches 1_1/2_in two_inch 2_inch 3_inch three_inch a_couple_of_inches couple_inches couple_of_inches several_inches',
    POKE: 'screwdriver knife key awl pencil finger nail stick poke~ poked pushed pushes',
    SINKS_IN:
      'sank sinks sank_in sinks_in goes_in went_in goes_right_in straight_in right_through to_the_handle goes_through poke_through poke_it_in poke_a_key',
    SHAVE:
      'a_bit_off some_off chunk_out piece_out notch_out off_the_bottom off_the_top bit_off inch_off little_off slice_off take_off shave_off cut_off',
    STICKS:
      'doors_stick doors_sticking doors_have_started doors_wont_close doors_dont_close door_sticks doors_are_sticking cracks_in_the_wall~ windows_stick',
    FRAME: `joist~ joice~ beam~ girder~ header~ sill_plate~ mud_sill rim_joist~ rim_board bearer~ framing support_post~ support_beam~ post~ pier~ column~ ledger~ truss~ stringer~ rafter~ i_joist~ i_joists lally_column floor_frame floor_framing load_bearing bearing_wall stud~ main_beam support~ floor_support~ ridge_beam lvl_beam cripple_wall
      structural_member floor_system lumber_under members timbers timber`,
    HURT: `crack~ cracked cracking split~ splitting broke broken break~ snapp* rot rots rotted rotten rotting decay~ decayed soft mush mushy crumbl* punky spongy termite~ termite_damage~ eaten chewed sagg* sag~ sinking sunk twisted bowed bent bending leaning lean~ tilting tilted fail~ failing failed weak missing gone damaged burnt charred
      cut_through hacked notched undersized collaps* pulled_away pulling_away separated separating shifted shifting bad_shape falling_apart disintegrat* deteriorat* pulpy fungus rust_through rusted_through rusted water_damaged dry_rot insect~ ants beetle~ woodworm wood_rot hanging cracked_all fractured buckled buckling loose hollow dropped slipped not_touching sank sank_in goes_in pokes_through poke daylight gap_between dangling`,
    CUTS: 'cut cutting notch~ notched notching drill~ drilled drilling saw~ sawed bore~ bored remove~ removing hack~ hacked chop~ shave~ plane~ cut_out_of cut_into take_out trim',
    FLOOR:
      'floor~ flooring subfloor hallway room bathroom kitchen stair~ staircase landing deck porch ceiling house whole_floor second_story upstairs',
    SINKS:
      'sag~ sagging sagged saggy sink~ sinking sunk bounc* bouncing springy trampoline droop~ drooping droopy swaybacked moves_when moved_when shakes_when settling caved_in flexes_a_lot deflects swayback floor_dropped floor_has_dropped floor_is_dropping floor_dropping whole_floor_dropped',
    GIVES:
      'collaps* caving cave_in caved gave_way giving_way give_way gives_way gave_out giving_out about_to_fall going_to_fall gonna_fall fall_through fell_through falling_through going_to_collapse fall_in falling_in broke_through breaking_through went_through coming_down about_to_go about_to_collapse gonna_collapse came_down dropped_out',
    FOOT: 'foot leg chair_leg heel foot_went my_foot',
    FOOT_GOES:
      'went_through going_through goes_through broke_through through_the_floor through_the_subfloor through_the_boards went_thru through_the_ceiling punched_through almost_went',
    FOUNDATION: 'foundation foundation_wall footing~ slab_edge pier_and_beam crawlspace_pier~ retaining_wall',
    FOUNDATION_HURT:
      'crack~ cracked cracking settl* shift~ shifting sink~ sinking bow~ bowing crumbl* leaning moving failing heaving',
    WALL_OUT:
      'take_out taking_out remove~ removing knock_out knock_down knocking_down knocked_out tear_out tear_down tearing_down demo demolish~ open_up opening_up cut_out get_rid_of rip_out',
    WALL: 'wall~ bearing_wall partition',
    BEARING: 'load_bearing bearing_wall structural_wall weight_bearing loadbearing',
    PESTS: 'termite~ carpenter_ant~ powderpost powder_post woodworm~ wood_boring wood_borer~ deathwatch',
    BUILDERS:
      'contractor engineer structural_engineer builder carpenter framer inspector structural_guy foundation_company pest_control exterminator',
    MENDED:
      'checked fixed repaired replaced sistered cleared okayed signed_off approved reinforced shored_up says_its_fine said_its_fine said_its_safe says_its_safe says_its_sound said_it_is_safe inspected said_its_ok said_its_okay said_it_is_sound treated braced passed',
    SOUND_NOW:
      'joist_was_replaced joists_were_replaced joist_was_repaired joists_were_repaired joist_was_sistered joists_were_sistered joist_has_been_replaced joist_has_been_repaired joists_have_been_repaired joists_have_been_replaced joist_is_fixed joists_are_fixed beam_was_replaced beam_was_repaired beam_has_been_replaced structure_was_repaired joist_is_repaired joists_got_fixed joist_got_fixed sistered_the_joist sistered_the_joists',
    FLOOR_HERE:
      'floor~ subfloor ceiling stairs staircase landing deck house room porch wall beam whole_floor hallway balcony',
    FRAME_SURE: 'joist~ joice~ beam~ girder~ rim_joist~ truss~ stringer~ i_joist~ load_bearing',
    HOLE_SAID: 'hole~ notch~ notched cutout cut_out drilled',
    UNDERFLOOR:
      'wood_underneath wood_below wood_under beam_under boards_under_the_subfloor lumber_under_the_floor wood_under_the_subfloor wood_below_the_subfloor wood_under_the_floor what_holds_the_floor holding_up_the_floor under_the_subfloor',
    UNDER_PANEL,
    WOOD_UNDER:
      'and_wood_under and_wood_below and_the_wood_under and_wood_underneath boards_on_edge board_on_edge lumber_on_edge wood_on_edge wood_under_it boards_under_it',
    WOODY: 'wood wooden board~ lumber part~ piece~ one ones planks timber~',
    /** Wood that has lost its strength, by any name. */
    DECAY:
      'rot rots rotted rotten rotting decay~ decayed punky mush mushy crumbl* fungus fungi fungal termite~ ant ants beetle~ woodworm~ insect~ bugs eaten deteriorat* disintegrat* perished spongy pulpy',
    FRAME_HERE:
      'joist~ joice~ beam~ girder~ header~ sill~ rim~ bearer~ frame~ framing structur* support~ post~ pier~ column~ timber~ ledger~ truss~ stringer~ stud~ rafter~ lumber member~ i_joist~ 2_x 3_x 2_by 3_by',
    HURT_HERE:
      'crack~ cracked split~ splitting broke broken snapp* notch~ notched cut~ cutting hole~ drilled twist~ bow~ bowed bent bend~ loose undersized damage~ damaged burn~ burnt char charred fire missing wet soft damp stain~ stained gone bad weak failed failing shot ruined mold~ moldy mould~ mouldy fire_damage fire_damaged hurt iffy soggy compromised',
    SAGS_HERE:
      'sag~ sagged sagging saggy droop~ drooping droopy bounc* bouncing spring springs springy springiness sink~ sinking sunk sunken collapse~ collapsed collapsing trampoline gives_way give_way giving_way caves_in caved_in caving_in cave_in low_in_the_middle low_in_the_center lower_in_the_middle dips_in_the_middle dip_in_the_middle low_at_the_middle hollow_in_the_middle bowed_in_the_middle low_towards_the_middle low_toward_the_middle load_bearing structural structurally loadbearing bearing_wall bearing_walls',
    PANEL:
      'panel~ sub_floor~ subfloor~ ply plywood osb particle_board~ particleboard chip_board~ chipboard sheet~ sheathing deck~ decking underlayment',
    UNSURE:
      'unsure not_sure not_so_sure not_quite_sure not_really_sure uncertain dont_know do_not_know didnt_know cant_tell cannot_tell dont_see cant_see cant_say cant_know cannot_know cannot_see cannot_say do_not_see do_not_say dunno unknown no_idea unclear something somethings maybe might possibly possible perhaps probably probable could_be may_be idk weird strange',
    SPACED: 'oc on_center on_centre spacing spaced between',
    PEST_SIGN:
      'damage damaged ate eaten eat eating joist~ wood floor subfloor beam~ sill found chewed in_the in_my infestation everywhere tunnels evidence holes signs',
    LEANS:
      'leaning leaning_in leaning_out leans_in tilting tilting_in bulging bulging_in bowing bowing_in tipping tipping_in coming_in',
    WALL_CREAKS: 'creaking creaks groaning groans cracking crackling popping moving shifting making_noise~',
    FLOOR_DROPPED: 'floor_dropped floor_has_dropped floor_is_dropping floor_dropping',
    CUT_TO:
      'back_to halfway to_the between along on_the over along_the centered on_center flush beside middle center centre line',
    WALL_OTHER:
      'trim base baseboard baseboards cabinet cabinets paper tile tiles carpet paint nail nails anchors plate plates off from against along shelf shelves outlet vinyl molding mount heater vent',
    SAG_OTHER: 'couch sofa carpet tack shelf mattress bed line wallpaper padding measurement price prices door',
    /** Floors and framing, and that they moved: `the floor dropped`, `joist sank`. */
    FLOOR_THING:
      'room corner_of_the_room corner_of_the_house side_of_the_house floor~ subfloor sub_floor joist~ beam~ girder~ header~ landing stairs staircase ceiling hallway deck wall kitchen_floor bathroom_floor house sill ledger porch balcony framing tub span doorway hall upstairs',
    WENT: 'dropped sank sunk sinking dropping fell falling went_down going_down goes_down came_down come_down coming_down sagged sagging sags gave_way slumped slumping tipped tipping tilted tilting dipped drooped drooping collapsed has_dropped is_dropping let_go dropped_away pulled_away',
    SITS_LOWER:
      'sits_lower is_lower looks_lower lower_now feels_lower tilts slopes sloping slants slanted moves shifted dips',
    AFTER_CUT: `cut cutting cut_out notch~ notched notching sawed sawn sawing took_the took_that took_our took_a took_out taken_out take_out removed removing remove pulled pulled_out pulling yanked knocked_out knocked_down knocking_out took_down jacked jacking hacked drilled chopped chopping demoed tore_out tearing_out bored`,
    CUT_COVER:
      'carpet padding pad tack_strip tack_strips staples plank planks baseboard baseboards trim quarter_round moldings old_vinyl laminate weeks months hammer tool phone box boxes price prices measurement level_drops tape',
    BANG: 'bang boom loud_crack loud_pop big_crack big_pop gunshot gun_shot cracking_sound cracking_noise snapping_sound thud thunk loud_snap huge_crack loud_noise crack_like creaking_and groaning_and loud_cracking sharp_crack',
    INCHES_DOWN: 'inch inches half_inch an_inch 1_in 2_in 3_in cm foot',
    SANK: 'dropped dropping sank sunk sinking fell went_down came_down going_down slumped',
    YEARS_PAST: 'years year decades century settled_years old_house over_time since_1 over_the_years',
    MORE_NOW:
      'more now suddenly since just overnight all_of_a_sudden this_morning today after ever_since and_growing getting_worse worse tonight',
    POSTS:
      'post~ pier~ column~ jack_post~ lally~ lally_column~ support_post~ screw_jack~ floor_jack~ house_jack~ shoring support~ jack~ pillar~ stilts',
    TIPS: 'tip~ tipping tipped lean~ leaning leans tilt~ tilting tilted wobbl* kicked_out slid_out slipped_out slipped slipping walked fell_over falling_over fell knocked_over out_of_plumb knocked_loose crooked twisting rolled_out popped_out',
    POST_UNDER:
      'basement crawlspace crawl_space under beneath below underneath floor beam~ girder~ joist~ house holding_up holds_up holding cellar kitchen dining_room living_room',
    POST_OTHER:
      'newel banister fence railing rail mailbox bed lamp lean_on leaning_against leaned deck_rail photo stair_post baluster~ fencing shelf',
    SUBFLOORY:
      'subfloor~ sub_floor~ plywood ply osb particle_board particleboard chipboard floorboard~ floor_board~ underfloor decking sheathing',
    SPONGY:
      'spongy spongey sponge squishy squish squishes mushy soggy punky pulpy rotted rotten rotting mush soft_spot~ is_soft are_soft feels_soft went_soft gone_soft and_soft soft_and soft_around soft_by soft_near soft_under soft_in delaminat* crumbly falling_apart waterlogged',
    BLACKENED:
      'is_black are_black turned_black gone_black went_black blackened looks_black black_and_soft black_and_wet black_around black_under black_near black_by black_next all_black dark_and_wet black_rot is_dark_and turning_black black_in_the black_from',
    SPONGY_FLOOR: 'spongy spongey squishy squishes mushy soggy punky',
    RAMP: 'ramp patio driveway lawn transition',
    SLIGHT: 'drain shower patio ramp driveway plank_slope bounce_back transition_slope',
    UPSTAIRS:
      'upstairs second_floor 2nd_floor second_story 2nd_story third_floor 3rd_floor attic loft top_floor upper_floor apartment joists',
    LOADED:
      'pallet~ bag bags box boxes carton cartons lb lbs pounds weight load ton tons tub aquarium fish_tank waterbed safe piano sheets drywall tile tiles stack stacks leveler concrete stone',
    WEIGHT_ASKED: 'how_much_weight how_many_pounds how_many_lbs max_weight weight_limit~ load_limit~ live_load psf',
    HOLDS:
      'hold holds support bear stack stacking stacked stacks pile piled piling too_heavy too_much overload* in_one_spot one_spot one_place one_corner one_room_at collapse spread_out store storing psf',
    BEGINS: 'starting_to started_to beginning_to begun_to is_now now keeps is_still',
    JUST_NOW: 'just suddenly all_of_a_sudden right_now all_at_once',
    FELL_IN_PLACE: 'into_place in_place together asleep apart in_love',
  },
  rules: [
    { level: 'stop', needs: 'FLOOR DIP INCHES', within: 10, unless: 'SLIGHT' },
    { level: 'stop', needs: 'POKE SINKS_IN FRAME', within: 16 },
    { level: 'stop', needs: 'SHAVE FRAME_SURE', within: 8, unless: 'NO_CUT' },
    { level: 'stop', needs: 'FLOOR DIP STICKS', within: 22 },
    { level: 'stop', needs: 'FLOOR DIP BOUNCES', within: 8 },
    { level: 'emergency', needs: 'GIVES FLOOR_HERE', within: 7, unless: 'THINGS_FALL' },
    { level: 'emergency', needs: 'GIVES FRAME', within: 7 },
    { level: 'emergency', needs: 'FOOT FOOT_GOES', within: 5, unless: 'SHARP' },
    { level: 'stop', needs: 'FRAME HURT', within: 6, unless: 'SAG_OTHER SPACED' },
    { level: 'stop', needs: 'FRAME SINKS', within: 6, unless: 'SAG_OTHER' },
    { level: 'stop', needs: 'CUTS FRAME_SURE', within: 4, ordered: true, unless: 'CUT_TO' },
    { level: 'stop', needs: 'FLOOR SINKS', within: 4, unless: 'SAG_OTHER SLIGHT' },
    { level: 'stop', needs: 'FRAME_SURE HOLE_SAID', within: 7, unless: 'CUT_TO' },
    { level: 'stop', needs: 'FOUNDATION FOUNDATION_HURT', within: 6 },
    { level: 'stop', needs: 'WALL_OUT WALL', within: 5, ordered: true, unless: 'WALL_OTHER' },
    { level: 'stop', needs: 'BEARING' },
    { level: 'stop', needs: 'PESTS PEST_SIGN', within: 9 },
    {
      level: 'emergency',
      needs: 'FLOOR_WENT AFTER_CUT',
      within: 18,
      unless: 'CUT_COVER RAMP SAG_OTHER',
      unlessBefore: 'SUPPOSED',
    },
    { level: 'emergency', needs: 'FLOOR_WENT BANG', within: 18, unless: 'THINGS_FALL' },
    {
      level: 'emergency',
      needs: 'FRAME_SURE BEGINS HURT AFTER_CUT',
      within: 16,
      unless: 'CUT_COVER',
      unlessBefore: 'SUPPOSED',
    },
    {
      level: 'emergency',
      needs: 'FLOOR_THING JUST_NOW SANK',
      within: 6,
      ordered: true,
      unless: 'PRICE SAG_OTHER FELL_IN_PLACE',
    },
    { level: 'emergency', needs: 'FLOOR_SANK JUST_NOW', within: 7, unless: 'PRICE SAG_OTHER THINGS_FALL' },
    { level: 'emergency', needs: 'BANG FLOOR_THING SITS_LOWER', within: 16, unless: 'THINGS_FALL' },
    {
      level: 'emergency',
      needs: 'FLOOR_SANK INCHES_DOWN',
      within: 7,
      unless: 'PRICE SLIGHT PAST YEARS_PAST',
      unlessBefore: 'SUPPOSED',
    },
    {
      level: 'emergency',
      needs: 'FLOOR_WENT INCHES_DOWN MORE_NOW',
      within: 12,
      unless: 'SLIGHT PAST YEARS_PAST CUT_COVER',
      unlessBefore: 'SUPPOSED',
    },
    { level: 'emergency', needs: 'POSTS TIPS POST_UNDER', within: 10, unless: 'POST_OTHER', unlessBefore: 'SUPPOSED' },
    { level: 'emergency', needs: 'WALL LEANS WALL_CREAKS', within: 8, unlessBefore: 'SUPPOSED' },
    { level: 'note', needs: 'SUBFLOORY SPONGY', within: 7, about: 'panel' },
    { level: 'note', needs: 'SUBFLOORY BLACKENED', within: 6, about: 'panel' },
    { level: 'note', needs: 'FLOOR_THING SPONGY_FLOOR', within: 6, about: 'panel' },
    { level: 'note', needs: 'UPSTAIRS WEIGHT_ASKED', within: 16, about: 'load' },
    { level: 'note', needs: 'UPSTAIRS LOADED HOLDS', within: 20, undeniable: true, about: 'load' },
    { level: 'stop', needs: 'FLOOR_DROPPED' },
    { level: 'stop', needs: 'UNDERFLOOR HURT', within: 6 },
  ],
  joins: {
    FLOOR_WENT: { needs: 'FLOOR_THING WENT', within: 4 },
    FLOOR_SANK: { needs: 'FLOOR_THING SANK', within: 4 },
  },
  here: 'SAGS_HERE BEARING',
  hereRules: [
    { level: 'stop', needs: 'FRAME_HERE HURT_HERE', within: 12, undeniable: true },
    { level: 'stop', needs: 'FRAME_HERE DECAY', within: 12, undeniable: true },
    { level: 'stop', needs: 'UNDER_PANEL WOODY HURT_HERE', within: 9 },
    { level: 'stop', needs: 'UNDER_PANEL WOODY DECAY', within: 9 },
    { level: 'stop', needs: 'WOOD_UNDER HURT_HERE', within: 8 },
    { level: 'stop', needs: 'WOOD_UNDER DECAY', within: 8 },
  ],
  lookalikes: `${SOUND_FRAME} between_a_joist between_joist floating_floor~ floating_floors beam_of_light laser_beam~ beam_level post_the post_a post_it post_this post_my post_office post_up post_here post_pictures post_photos post_pics post_construction goal_post~ fence_post~ bed_post~ newel_post~ lamp_post~ blog_post~ posted soft_close soft_carpet soft_transition softwood soft_white soft_gray soft_grey soft_color
    support_your customer_support tech_support support_team support_group header_image stud_finder~ stud_bay sagging_couch crack_of_dawn crack_filler hairline_crack_in_the_plank column_a column_b spread_sheet_column excel_column column_width frame_of_mind time_frame bed_frame~ door_frame~ picture_frame~ window_frame~ table_frame truss_me broken_english rot_resistant rot_proof rotproof
    bent_nail~ broken_tile~ broken_plank~ damaged_box~ damaged_carton~ missing_box~ missing_plank~ structure_of_the_plank posted_speed between_the_joists between_joists between_two_joists
    drop_in_price sinking_feeling kitchen_sink bathroom_sink sink_cabinet sink_base double_sink sink_vanity sink_nails sink_the_nails sink_the_nail sink_the_screws sink_the_screw sink_in under_sink sink_area pedestal_sink vanity_sink off_the_wall wall_to_wall from_wall_to_wall`,
  clears: [{ needs: 'BUILDERS MENDED', within: 8 }, { needs: 'SOUND_NOW' }],
};

export const OPENING: Lexicon = {
  hazard: 'opening',
  classes: {
    SUBFLOOR_HOLE:
      'leaving_it_overnight leave_it_overnight leaving_it_open open_overnight hole_down left_it_open open_to_the',
    DOWN: 'down_to down_into straight_down into_the_basement to_the_basement to_the_room_below to_the_bedroom bedroom_underneath bedroom_below dining_room_below room_underneath below_it through_to see_through_to see_the_basement straight_through two_stories down_below',
    STAIR: 'stair~ stair_opening stairwell landing loft balcony mezzanine staircase',
    NO_RAIL:
      'no_rail no_railing no_handrail no_banister without_a_rail rail_off railing_off took_it_off took_off_the_rail took_the_rail took_the_banister rail_is_off banister_is_off missing_rail no_guard',
    STAIR_PART:
      'tread treads riser risers rail rails railing railings handrail~ banister~ bannister~ baluster~ spindle~ newel guardrail~ guard_rail gate steps',
    TAKES_OFF: 'removed took tore pulled ripped cut yanked demoed',
    PART_OFF: 'off out gone down missing removed open torn_out ripped_out pulled apart loose taken',
    STAIR_WITHOUT:
      'no_railing no_railings without_a_railing without_railing without_railings no_rail no_rails without_rails no_treads without_treads no_banister no_handrail no_spindles open_risers took_the_railing took_off_the_railing took_the_treads took_down_the_railing took_down_the_banister pulled_the_treads removed_the_railing removed_the_treads removed_the_banister open_stairs open_staircase',
    FALLS_IN: 'fall~ falls falling fall_in fall_down fall_through step_in step_through wont_fall not_fall',
    GAP: 'gap hole opening void cutout',
    NOTHING_BETWEEN:
      'nothing_between_me nothing_between_us nothing_under_me only_drywall_below nothing_but_drywall nothing_but_the_ceiling only_the_ceiling_below standing_on_joists',
    TOOK_UP: 'took_up taken_up cut_out ripped_out pulled_up removed tore_out torn_out ripped_up pulled_out',
    BIG: 'big huge large giant 3x4 open deep',
    OPEN_FLOOR: `open_joist~ exposed_joist~ bare_joist~ walk_on_joist~ walking_on_joist~ walk_on_the_joist~ walking_on_the_joist~ step_between_joist~ stepping_between_the_joists open_stairwell no_railing railing_off railing_is_off removed_the_railing without_a_railing without_railing took_off_the_railing took_the_railing railing_removed floor_is_open open_floor open_hole~ uncovered_hole~ hole_is_open big_hole_in_the_floor
      floor_ripped_open floor_opened_up no_subfloor subfloor_is_out subfloor_is_off subfloor_is_gone subfloor_removed removed_the_subfloor subfloor_torn_out open_cavity hole_overnight open_overnight banister_off open_trap_door open_hatch joists_exposed joists_are_exposed joists_open open_to_below gaping_hole open_stair_well missing_railing tore_out_the_subfloor pulled_up_the_subfloor`,
    FLOOR_HOLE: 'hole~ opening pit gap void',
    IN_FLOOR:
      'in_the_floor in_my_floor in_the_subfloor in_my_subfloor in_floor in_subfloor in_our_floor in_the_hallway_floor',
    PEOPLE:
      'kid~ child children toddler~ baby pet~ dog~ cat~ overnight fall falling step~ stepped walk~ cover~ safe leave big huge large open step_in fell trip tripped',
    HOLE_FOR:
      'vent register pipe drain duct toilet flange outlet radiator cable plug screw nail small little pinhole wire filler doorway doorways size',
    COVERED:
      'hole_is_covered covered_the_hole hole_covered closed_up hole_is_closed patched_the_hole hole_is_patched plywood_is_down subfloor_is_back new_subfloor_is_in railing_is_back railing_is_up covered_with_plywood hole_was_patched hole_was_covered covered_it_with_plywood',
  },
  rules: [
    { level: 'note', needs: 'GAP DOWN', within: 12 },
    { level: 'note', needs: 'STAIR NO_RAIL', within: 10 },
    { level: 'note', needs: 'STAIR_OFF YOUNG', within: 18, undeniable: true, about: 'stairs' },
    { level: 'note', needs: 'STAIR_TAKEN YOUNG', within: 18, undeniable: true, about: 'stairs' },
    { level: 'note', needs: 'STAIR_WITHOUT YOUNG', within: 18, undeniable: true, about: 'stairs' },
    { level: 'note', needs: 'GAP FALLS_IN', within: 14, unless: 'HOLE_FOR' },
    { level: 'note', needs: 'NOTHING_BETWEEN' },
    { level: 'note', needs: 'TOOK_UP SUBFLOOR_HOLE', within: 14 },
    { level: 'note', needs: 'OPEN_FLOOR' },
    { level: 'note', needs: 'FLOOR_HOLE IN_FLOOR PEOPLE', within: 12, unless: 'HOLE_FOR' },
  ],
  joins: {
    STAIR_OFF: { needs: 'STAIR_PART PART_OFF', within: 4 },
    STAIR_TAKEN: { needs: 'TAKES_OFF STAIR_PART', within: 4 },
  },
  lookalikes: 'open_floor_plan~ open_plan open_concept open_floorplan open_floor_layout',
  clears: [{ needs: 'COVERED' }],
};

export const SLAB: Lexicon = {
  hazard: 'slab',
  classes: {
    SLAB_WORD: 'slab concrete foundation floor',
    CABLES_IN:
      'cables_in has_cables cables_in_it steel_cable~ steel_rope wire_rope grout_plug~ round_plugs cable_pockets stressed_cables live_end~ dead_end_anchor~',
    TENSION:
      'post_tension~ post_tensioned post_tensioning posttension~ tension_cable~ tension_slab~ pt_slab~ tensioned_slab tensioned_concrete stressed_slab prestressed pre_stressed tension_tendon~ slab_tendon~ tendon_slab tensioned tendons',
    SCANNED: 'scanned x_rayed xrayed gpr located marked not_post_tension no_cables_there',
    SCANNERS: 'engineer scanning_company contractor scanner builder',
  },
  rules: [
    { level: 'stop', needs: 'SLAB_WORD CABLES_IN', within: 14 },
    { level: 'stop', needs: 'TENSION FASTEN', within: 14 },
    { level: 'note', needs: 'TENSION' },
  ],
  lookalikes: 'tension_rod~ tension_pole tension_headache high_tension',
  clears: [
    { needs: 'SCANNERS SCANNED', within: 8 },
    { needs: 'TENSION SCANNED', within: 8 },
  ],
};

export const HEATED_FLOOR: Lexicon = {
  hazard: 'heated-floor',
  classes: {
    FIXES:
      'nail~ nailing nailed screw~ screwing screwed drill~ drilling staple~ stapling anchor~ tapping_in tack~ bolt~ fix fixing door_stop~ doorstop~ pin~ concrete_anchors track fasten~ shoot chisel~ jackhammer demo hammer~ cut_out cut_into saw~',
    HEATED:
      'heated_floor~ heated_slab radiant_floor~ radiant_heat radiant_heating radiant_slab radiant_tube~ radiant_tubing radiant_line~ radiant_pipe~ floor_heat floor_heating underfloor_heating under_floor_heating in_floor_heat in_floor_heating infloor_heat heating_cable~ heating_mat~ heat_mat~ warm_floor_system hydronic heat_cable~ heating_wire~ heating_element~ pex_in_the_slab tubes_in_the_slab tubing_in_the_slab heating_tubes radiant_system electric_floor_heat radiant hydronic_floor ufh warm_water_loops water_loops heating_loops wet_underfloor underfloor_heat hot_water_loops pex_loops heating_pipes_in_the_floor floor_loops warm_floor heated_screed electric_mat_under floor_warming warming_wires warming_cables warming_cable~ warming_mat~ floor_warmer warming_system',
    HEAT_SAFE:
      'pictures_of_the_tubes mapped_the_tubes mapped_the_cables tubes_are_mapped cables_are_mapped located_the_tubes located_the_cables thermal_camera infrared_camera tubes_are_marked',
    HEAT_MEN: 'plumber electrician installer heating_contractor hvac',
    HEAT_OTHER: 'baseboard_nails',
  },
  rules: [{ level: 'stop', needs: 'FIXES HEATED', within: 16, unless: 'HEAT_OTHER' }],
  lookalikes: 'radiant_barrier radiant_color radiant_heater~ heated_argument heated_debate heated_garage heated_room',
  clears: [{ needs: 'HEAT_SAFE' }, { needs: 'HEAT_MEN MAPPED', within: 8 }],
};
