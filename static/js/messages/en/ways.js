// English texts of the sheet that tells what stands, and of the ways to decide it.

export const WAYS = {
  "figure_name.window_s": "The pH at 6 h, read at most this far from its time",
  "matters.title": "What stands",
  "matters.none": "Nothing stands against this make.",
  "matters.rule": "By: {rule}",
  "matters.rule_secondary": "By: {rule}, read where another quotes it",
  "matters.decided": "Decided by {name} at {at}. {way}. {why}",
  "matters.who": "It takes the role {role} to decide.",
  "matters.nobody": "Nobody can decide this here: it goes when the fact changes.",
  "matters.stops": "It stops:",
  "matters.stop.begin": "beginning “{step}” and what follows it",
  "matters.stop.end": "ending “{step}”",
  "matters.stop.close": "closing the make",
  "matters.stop.release": "releasing the cheese",
  "matters.mark": "DECIDED",
  "matters.way": "What is done?",
  "matters.decide": "Decide",
  "way.hold_again": "Hold again",
  "way.handle_as_heat_treated": "Handle as heat-treated milk",
  "way.handle_as_raw": "Handle as raw milk",
  "way.discard": "Discard it",
  "way.chart_shows": "Go on: the chart shows the hold",
  "way.tested_elsewhere": "Go on: the result stands on another record",
  "way.confirmed_negative": "Go on: the confirmed test was negative",
  "way.recorder_set": "Go on: the recorder was set and noted",
  "way.authority_agreed": "Go on: the authority agreed",
  "way.keep_apart": "Keep it apart and test it",
  "way.tests_met": "Go on: the tests meet their limits",
  "way.goes_by_time": "Go on by time: no pH was to be had",
  "way.days_shown_elsewhere": "Go on: the store’s own log shows the days",
  "way.not_in_our_plan": "Go on: this test is not in our plan",
  "way_means.hold_again":
    "The hold opens again and its clock starts anew with the next reading that is hot enough.",
  "way_means.handle_as_heat_treated":
    "The steps become those of heat-treated milk; the days of curing count.",
  "way_means.handle_as_raw":
    "The steps become those of raw milk; the days of curing count.",
  "way_means.discard":
    "The make is over: none of its steps goes on, nothing of it is stored or released. Say where it went.",
  "way_means.chart_shows":
    "The make goes on. The milk stays undecided: it is handled as not pasteurised.",
  "way_means.tested_elsewhere": "Say on which record, and its number.",
  "way_means.confirmed_negative":
    "Say who confirmed it and how, by your procedure and authority.",
  "way_means.recorder_set": "Say who set it, and by how much.",
  "way_means.authority_agreed": "Say who agreed, and to what.",
  "way_means.keep_apart":
    "The work goes on; the make is not closed and nothing is released until the tests are in.",
  "way_means.tests_met": "Say which tests, and where their results are kept.",
  "way_means.goes_by_time":
    "The work goes on; the cheese is not released for this alone.",
  "way_means.days_shown_elsewhere": "Say where the log is kept.",
  "way_means.not_in_our_plan": "Say where your plan says so.",
  "field.matter": "Matter",
  "field.way": "Way",
  "note.hold_rule_unknown": "the rule of the hold is not known here",
  "note.hold_skipped": "the hold was skipped",
  "note.ph_not_reached": "pH {value} after {after_s}; at most {limit} is asked",
  "note.mark_missed": "neither pH nor acidity was read round {value} after the start",
  "note.acidity_without_limit":
    "acidity {value} after {after_s}; no source sets a limit for it in this cheese",
  "note.acidity_not_reached":
    "acidity {value} after {after_s}; at least {limit} is asked",
  "note.curing_days": "{value} of {limit} days are shown",
  "note.curing_start_unknown": "no end of moulding was entered, so no day is the first",
  "note.lab_failed": "does not meet: {test}",
  "note.lab_awaited": "awaited: {test}",
  "note.lab_samples": "{value} of {limit} samples are in: {test}",
  "note.lab_above":
    "{value} of {samples} in the set of {at_ms} above {limit} in a gram, where none is allowed",
  "note.lab_between":
    "{value} of {samples} in the set of {at_ms} between {low} and {high} in a gram, where at most {limit} are allowed",
  "note.check_overdue":
    "thermometer check overdue since {since_ms}; one every {limit} days is set",
  "note.check_not_on_record":
    "no thermometer check is on record up to {since_ms}; one every {limit} days is set",
  "note.thermometer_off": "off by {value}; at most {limit} is allowed",
  "of.cheese_phosphatase": "phosphatase of the cheese",
  "of.staph_counts": "staphylococci",
  "of.listeria": "Listeria monocytogenes",
  "of.salmonella": "Salmonella",
};
