/** Word classes shared by several hazards: tool actions, places, times, negations and fears. */

import type { Classes } from '../tables.ts';

export const COMMON: Classes = {
  /** Ways to hit a line. */
  HIT: `hit~ hitting struck strike~ striking nick~ pierce~ puncture~ drill~ nailed nailing screwed screwing sawed sawing sawn bend~ bent kink~ break~ broke broken breaking
    crack~ snap~ rupture~ damage~ yank~ loosen~ wiggled disconnect~ knock~ bump~ smash~ sever~ slice~ scratch~ crush~ dent~ rip~ ripped tear~ tore torn poke~ jab~ chip~ clip~ gouge~ punch~ shear~
    stabbed stab~ busted bust~ split~ splitting chop~ shot chewed mangled punctured went_into goes_into go_into gone_into went_through go_through going_through gone_through ran_through right_through clean_through cut_into cut_through cut_thru cut_a cut_the cut_my cut_an cut_one cut_some cut_its cut_our cut_open just_cut
    accidentally_cut sawed_into sawed_through screw_into screw_through screwed_into nail_into nail_through drilled_into drill_into came_loose came_off came_apart come_loose pulled_loose pulled_apart pulled_out pulled_off
    put_a_nail put_a_screw put_a_hole drove_a drove_the stapled staple_through staple_in nicking slashed caught clipped grazed snagged speared sawn_through went_right_through`,
  /** Driving fasteners and cutting. */
  FASTEN: `nail~ nailing nailed screw~ screwed screwing drill~ staple~ stapled cut~ cutting saw~ sawed sawing pry~ pried prying pull~ hammer~ anchor~ bolt~ fasten~ drive~ drove driven chisel~ grind~ demo demoed brad~ core_drill~ `,
  /** It only goes around the thing, or is meant for it. */
  AROUND: `around round for near beside past next_to by behind_the_plane to_fit to_clear fitting fits fit_around go_around go_round between over_the along`,
  ACTIVE: `now right_now help still everywhere fast hurry keeps keep wont_stop cant_stop getting_worse again all_over emergency quick quickly sos asap pls_help already`,
  PAST: `last_year last_month last_week last_summer last_winter last_spring last_fall years_ago year_ago months_ago month_ago weeks_ago week_ago ages_ago long_ago once_had once dried_out is_dry now_dry dry_now previous previously before_we_moved before_we_bought used_to back_in old_leak past`,
  ASKING: `can could may should is are does do will would what how why whether safe ok okay dangerous legal allowed risky worried worry`,
  /** Negates the word after it. */
  NO: `no not isnt arent wasnt werent aint without never neither nor none zero dont doesnt didnt cant cannot havent hasnt no_more no_longer no_sign_of no_signs_of no_trace_of no_evidence_of no_smell_of no_visible free_of rid_of absence_of cant_find_any didnt_find didnt_see dont_see dont_have doesnt_have doesnt_smell dont_smell cant_smell there_isnt there_arent no_known hardly nothing kein keine keinen sin sem pas nicht nao`,
  /** Words between a negation and what it negates. */
  FILLER: `a an any the more such real visible known active of sign signs trace evidence other actual to be it that this me getting seem seems seeing having our my your really exactly even see find found any_kind kind hit hitting`,
  /** Only feared, asked about or to be prevented. */
  FEARED: `avoid~ prevent~ so_i_dont so_we_dont so_you_dont so_that_i_dont without dont_want_to how_not_to not_to risk_of chance_of risk_hitting keep_from dont_wanna careful_not scared_to afraid_to afraid_of scared_of in_case_of to_not lest never want_to_avoid making_sure make_sure_i_dont rather_not before_i`,
  /** Keeps a clearing fact from counting yet. */
  NOTYET: `not hasnt havent isnt wasnt wont will going_to gonna coming comes tomorrow waiting wait when if once until till unless before needs_to need_to need needs should must has_to have_to want wants planning plan_to schedule~ next_week later would cant cannot never asked_for appointment booked supposed_to hope hopefully might may could doesnt didnt yet_to nobody`,
  /** Turns the sentence it starts into a question. */
  ASKS_FIRST: `has have did does do is was are were can will should could would may must how when who why what`,
  /** What is done to a floor or a wall, and would disturb or cover what lies there. */
  JOB_WORDS: `lay~ laying install~ installing put_down put_the putting start~ starting begin level~ leveling leveller leveler smooth~ rip~ ripping tear~ scrape~ scraping sand~ sanding strip~ stripping remove~ removing get_out get_the get_rid pull~ cut~ cutting drill~ nail~ screw~ fasten~ glue~ cover~ close closing grind~ patch~ fix~ steps order_of plan tools schedule floor_up roll_out underlay underlayment island first_row rows heat_gun paint~ painting demo hammer~ vacuum~ sweep~ clean~ bags skip dispose`,
  /** Money, in sentences where a shock or a deep cut is one of the purse. */
  PRICE: `black_friday clearance promo rebate~ percent_off markdown~ holiday price~ priced pricing price_tag~ quote~ quoted bill bills invoice~ estimate~ total sticker receipt checkout sale~ sales discount~ deal~ bargain~ coupon~`,
  PRICE_SEES: `on_the on_these on_those on_this on_that these those at over about saw seeing see seen heard hearing hear reading read opened looking_at looked_at got_the with from`,
  PRICE_DOES: `was is gave gives made makes had has took takes knocked left nearly almost hit came hurt hurts like`,
  /** Only planned or asked about, so nothing of it is happening yet. */
  SUPPOSED: `can_i can_we could_i could_we may_i ok_to okay_to safe_to ok_if okay_if safe_if will_it would_it will_the would_the how_do_i how_do_you how_to going_to gonna want_to wanna planning plan_to thinking_of thinking_about if_i if_we if_my if_our if_the before_i before_we what_if do_i_need do_i_have should_i_run should_i_use should_i_turn
    how_long how_far how_close how_many how_much might in_case so_they_dont so_it_doesnt so_he_doesnt so_she_doesnt so_my so_the so_our dont_let avoid~ prevent~ wont instead_of rather_than keep_my keep_the stop_my stop_the`,
  /** The very young and pets, who put into their mouths what lies on a floor. */
  YOUNG: `kid~ kiddo child children toddler~ baby babies infant~ newborn son sons daughter~ grandson~ granddaughter~ grandkid~ grandchild grandbaby nephew niece year_old month_old yr_old little_one little_guy boy boys girl girls twins dog~ doggo puppy puppies pup cat~ kitten~ kitty pet pets rabbit bunny parrot`,
  /** A question, by how it begins. */
  HOW_ASKED: `can_i can_we can_you could_i should_i should_we do_i do_we how_do how_to how_should whats_the what_is_the whats_best right_way best_way is_it ok_to okay_to safe_to ok_if is_this may_i before_i before_we need_to have_to advice_on tips_for`,
  INSIDE: `indoors inside in_the_house in_the_basement in_the_garage in_the_room in_my_room in_my_house in_my_basement in_the_basement basement garage room house living_room bedroom closet closed crawlspace crawl_space kitchen hallway`,
};

/** Expressions that look like a negation or an alarm and aren't. */
export const COMMON_LOOKALIKES = `without_water without_any_water not_sure not_only not_just no_idea no_doubt no_matter no_clue no_joke not_kidding no_good not_yet not_tested not_stopping not_stop no_one no_mask without_a_mask without_mask
  no_respirator without_gloves no_gloves no_power no_ventilation without_ventilation no_windows dont_know dont_care dont_want doesnt_stop doesnt_matter no_pressure not_a_drill no_kidding no_problem not_looking_good no_luck dont_think_so
  cant_get cant_tell cant_turn cant_find_the cant_shut cant_stop dont_know_if not_certain not_clear no_way no_way_to not_feeling dont_feel didnt_know didnt_realize didnt_notice not_good no_ppe not_breathing not_able not_okay not_ok
  without_power without_thinking without_knowing without_testing without_wetting without_looking dont_mind didnt_mean never_mind nevermind no_time no_shutoff not_responding not_responsive not_moving didnt_turn didnt_shut didnt_stop`;
