// Written by deploy/page_shapes.py from server/shapes/core: change the shapes there,
// then run it. What travels between core and page, in the order of the names. Instants
// [ms] are the server's; what is not known is null, never undefined.

/** The recipe's pH curve from the real starter time, or the expected one. */
interface AcidCurve {
  start_ms: number;
  is_real: boolean;
  points: AcidPoint[];
}

/** The pH that the recipe's own curve says. */
interface AcidPoint {
  at_ms: number;
  ph: number;
  low_ph: number;
  high_ph: number;
}

/** What wants hands: one side of a Clash. */
interface Act {
  make: string;
  make_name: string;
  vat: string | null;
  what: "begin" | "end" | "timer";
  step: string | null;
  title: Words;
  round: number | null;
  rounds: number | null;
  place: string | null;
  label: string | null;
  at_ms: number;
  early_ms: number | null;
  late_ms: number | null;
  by: string | null;
  wait: string;
  since_ms: number;
  next: string | null;
}

/** An ingredient that a step adds: what is planned and what was added. */
interface Add {
  ingredient: string;
  title: Words;
  planned: Dose | null;
  added: Added[];
  total: number;
  optional: boolean;
  done: boolean;
}

/** What went in, against what is planned of it. */
interface Added extends Who {
  amount: number;
  unit: string;
  lot: string | null;
  verdict: InBand | "no_plan";
}

/**
 * Something that rings: its id is make/matter.
 *
 * The kinds are timer, step_due, step_late, begin_late, reading_overdue, alert,
 * matter and unshown; the matter of an alert is its id. Priority 1 is the most
 * urgent of three. One that is open wants an answer.
 */
interface Alarm {
  id: string;
  make: string;
  make_name: string;
  vat: string | null;
  matter: string;
  kind: string;
  priority: number;
  step: string | null;
  title: Words | null;
  due_ms: number;
  rings_ms: number;
  key: string;
  numbers: Record<string, any>;
  do: Words | null;
  state: "unacknowledged" | "acknowledged" | "shelved" | "returned";
  is_open: boolean;
  mark: "act" | "check" | "ok";
  acknowledged: Said | null;
  shelved: Shelved | null;
  escalates_ms: number | null;
  escalated: boolean;
  returned_ms: number | null;
}

/** What rings and what will. */
interface Alarms {
  now_ms: number;
  next_change_ms: number | null;
  alarms: Alarm[];
  deadlines: Deadline[];
  wall: WallRow[];
}

/**
 * One thing that asks for a person; `do` says what to do, `due_ms` by when.
 *
 * `rings_ms` where it asks from later than it stands.
 */
interface Alert {
  id: string;
  form: "time" | "temperature" | "acid" | "quantity" | "record";
  level: "act" | "check";
  key: string;
  step: string | null;
  quantity: string | null;
  value: number | null;
  low: number | null;
  high: number | null;
  unit: string | null;
  by_s: number | null;
  due_ms: number | null;
  rings_ms: number | null;
  do: Words | null;
  since_ms: number;
  acknowledged: Said | null;
}

/** A number and its unit. */
interface Amount {
  value: any;
  unit: string;
}

/**
 * The answer to one sum; `known` and `of` (the size of wheel) only of a step's.
 *
 * `status` is the weakest of what it rests on.
 */
interface Answer {
  key: string;
  values: SumValue[];
  rests_on: RestsOn[];
  status: string | null;
  standing: Standing | null;
  notes: Keyed[];
  problems: SumProblem[];
  ask: ValueProblem[];
  missing: string[];
  known?: Known[];
  of?: string | null;
}

/** The unit that an input was read in. */
interface AsRead {
  as_read: string;
}

type BandHow = "done" | "left_open" | "running" | "to_come";

/**
 * A stage of the make; it ends where the next one begins, as expected or in truth.
 *
 * Where `has_end` is false, `end_ms` is no deadline. `share_frac` is its part of the
 * drawn length: in proportion to time, long stages cut short.
 */
interface BandStage {
  key: string;
  how: BandHow;
  begin_ms: number;
  end_ms: number;
  has_end: boolean;
  share_frac: number;
  late_s: number;
}

/**
 * Where a drawn bar is filled to, and between what: each a share of it [0..1].
 *
 * `low_frac` and `high_frac` are the ends of a band, `aim_frac` what is wanted, `side`
 * where the value lies against the band; None where there is none.
 */
interface Bar {
  at_frac: number;
  low_frac: number | null;
  high_frac: number | null;
  aim_frac: number | null;
  side: Side | null;
}

type Basis = "memory" | "practice" | "setting" | "typed" | "published";

/** The step that wheels lie in before they ripen, and when they are to. */
interface BeforeStore {
  step: string;
  begins_ms: number;
}

/** The words of a choice that a row makes sense with; `usual` beside none too. */
interface Beside {
  name: string;
  words: string[];
  usual: boolean;
}

/** A start that has fewer clashes. */
interface BetterStart {
  start_ms: number;
  count: number;
}

/** Which value of which sum answers a figure; the first of several that it has. */
interface Binding {
  sum: string;
  value: string | string[];
  size?: string;
  of?: string;
  band?: "estimate";
}

/**
 * All makes at once; of the clashes of the next 24 h the first three.
 *
 * Of those that ripen their ids, the newest first.
 */
interface Board {
  now_ms: number;
  next_change_ms: number | null;
  makes: MakeSummary[];
  ripening: string[];
  due: Due[];
  clashes: Clash[];
  clash_count: number;
  broken: Broken[];
  unread: Unread;
}

/**
 * The bottle or pack that is used, and the one whose label was read in this make.
 *
 * `is_read` tells whether anything that stands on the label of `lot` is known.
 */
interface Bottle {
  lot: string | null;
  of_label: string | null;
  is_read: boolean;
}

/**
 * A step as the list of steps shows it.
 *
 * The steps of a View are typed as whole ones: who reads more than this of one
 * looks at `full` or its status first. One that is open may be worked on. Its mark
 * is how it stands in one word, which every screen has a shape for.
 */
interface BriefStep {
  full: boolean;
  key: string;
  title: Words;
  place: string | null;
  round: number | null;
  rounds: number | null;
  status: StepStatus;
  mark: StepMark;
  is_open: boolean;
  waits_on: string[];
  planned_begin_ms: number;
  planned_end_ms: number;
  expected_begin_ms: number;
  expected_end_ms: number;
  begun: Who | null;
  ended: Reasoned | null;
  skipped: Reasoned | null;
  due_ms: number | null;
  due_basis: "floc" | "lasts" | null;
  end_low_ms: number | null;
  end_high_ms: number | null;
  timing: Timing;
  stopped_by: string[];
}

/** The working range of a brine's strength, and where this brine lies in it. */
interface BrineBand {
  low_frac: number;
  high_frac: number;
  bar: Bar;
}

/** A make or tank that cannot be shown whole: what is missing and since when. */
interface Broken {
  make: string;
  is_tank: boolean;
  name: string | null;
  batch: string | null;
  vat: string | null;
  practice: boolean;
  opened_ms: number;
  state: MakeState | null;
  is_open: boolean;
  holds: Reasoned[];
  what: string;
  why: BrokenWhy;
  since_ms: number | null;
  problems: Problem[];
  fault: string | null;
}

type BrokenWhy = "fault" | "newer" | "unsound";

type Called = "name" | "of" | "both";

/**
 * A hazard of a step; `do` where the step has words of its own for it.
 *
 * `id` is what a person has seen or not: the hazard, or hazard/step with own words.
 */
interface Caution {
  id: string;
  hazard: string;
  signs: Sign[];
  do: Words | null;
}

/** The roles that may change an entry now, and its fields that can be put right. */
interface Changeable {
  correct: string[];
  strike: string[];
  fields: Mendable[];
}

/** What `desk.trends` answers of one figure. */
interface Chart {
  key: string;
  unit: string;
  points: ChartPoint[];
  chart: ChartVerdict | null;
  average: ChartAverage | null;
}

/** The weighted average of late, with its limits. */
interface ChartAverage {
  values: number[];
  low: number;
  high: number;
  beyond: number[];
}

/** The chart beside the step that marks it, and a recorder that reads too high. */
interface ChartBeside {
  fields: ChartField[];
  recorder: Keyed | null;
}

/** A field of the vat's chart, and what is known of it here. */
interface ChartField {
  field: string;
  required: boolean;
  value: any;
}

/** Where makes like the others lie. */
interface ChartLimits {
  mean: number;
  low: number;
  high: number;
  mean_range: number;
  range_high: number;
  spread: number;
}

/** The figure of one make. */
interface ChartPoint {
  make: string;
  batch: string;
  at_ms: number;
  value: number;
}

/** Whether the newest makes are like the others; limits from ten makes on. */
interface ChartVerdict {
  verdict: "not_assessed" | "like_the_others" | "unlike_the_others";
  count: number;
  needed: number;
  limits: ChartLimits | null;
  beyond: number[];
  runs: number[];
}

/** Acts that want hands within five minutes. */
interface Clash {
  at_ms: number;
  acts: Act[];
  move: Move | null;
  is_soon: boolean;
}

/** What a make not opened yet would clash with. */
interface ClashesIf {
  clashes: Clash[];
  count: number;
  better: BetterStart | null;
}

type ClassName = "pasteurised" | "heat_treated" | "raw" | "undecided";

/** How an entry was put right. */
interface Correction extends Who {
  set: Record<string, any>;
  before: Record<string, any>;
  why: string;
}

/** A step or a timer that counts down; a timer has its label. */
interface Countdown {
  step: string | null;
  timer: string | null;
  label: string | null;
  due_ms: number;
}

/** What `desk.curve` answers; `spans` are begin and end of what may be shown. */
interface Curve {
  make: string;
  now_ms: number;
  series: CurveSeries[];
  bands: CurveBand[];
  steps: CurveStep[];
  acid: AcidCurve | null;
  spans: Record<SpanName, number[]>;
  at_hand: CurveAtHand | null;
}

/** What a small drawing of the make shows: of which quantity, and of which time. */
interface CurveAtHand {
  quantity: string;
  from_ms: number;
  to_ms: number;
}

/** The band of a step, at its real time or at the expected one. */
interface CurveBand {
  step: string;
  quantity: string;
  low: number | null;
  value: number;
  high: number | null;
  begin_ms: number;
  end_ms: number;
  is_real: boolean;
}

/** A reading, against the band of its step. */
interface CurvePoint {
  id: string;
  at_ms: number;
  value: number;
  step: string | null;
  low: number | null;
  high: number | null;
  verdict: InBand | null;
}

/** The readings of one quantity. */
interface CurveSeries {
  quantity: string;
  points: CurvePoint[];
}

/** A step as planned, beside what it was or is expected to be. */
interface CurveStep {
  key: string;
  title: Words;
  round: number | null;
  rounds: number | null;
  status: StepStatus;
  planned_begin_ms: number;
  planned_end_ms: number;
  begin_ms: number;
  end_ms: number;
}

/** What will ring or fall due next. */
interface Deadline {
  id: string;
  make: string;
  make_name: string;
  vat: string | null;
  step: string | null;
  title: Words | null;
  kind: string;
  mark: StepMark;
  label: string | null;
  due_ms: number;
  rings: boolean;
}

/** Who decided a matter, when, in which way and why. */
interface Decided extends Reasoned {
  way: string;
}

/**
 * How much of an ingredient is planned for the milk of this make.
 *
 * `bottle` is None of what has no label that its dose goes by. Its ends are None
 * where the recipe gives no tolerance.
 */
interface Dose {
  value: number;
  low: number | null;
  high: number | null;
  range_of: RangeOf;
  unit: string;
  origin: Origin | null;
  bottle: Bottle | null;
  basis: DoseBasis;
}

/** The recipe's amount, and the milk that it was taken for. */
interface DoseBasis {
  per: string;
  amount: number;
  amount_unit: string;
  milk_kg: number;
  milk_l: number;
  milk_from: string;
  status: string;
}

/**
 * One thing that falls due: in a make, in brine, in the store, by a timer.
 *
 * The one that leads stands for its step: it says who has that in hand.
 */
interface Due {
  make: string;
  make_name: string | null;
  practice: boolean;
  step: string | null;
  title: Words;
  round: number | null;
  rounds: number | null;
  what: DueWhat;
  timer: string | null;
  label: string | null;
  quantity: string | null;
  tank: string | null;
  load: string | null;
  wheels: number | null;
  size: string | null;
  due_ms: number;
  late_ms: number | null;
  level: DueLevel;
  mark: StepMark;
  when: DueWhen | null;
  leads: boolean;
  task: Task | null;
}

type DueLevel = "later" | "due" | "check";

type DueWhat = "step_begin" | "step_end" | "reading" | "turn" | "timer" | "unload";

type DueWhen = "late" | "now" | "hour" | "today" | "days";

/** Why a step should not be ended yet; `do` is what the recipe says to do. */
interface EndBlocker {
  key: string;
  arg: any;
  do?: Words;
}

/** A step that ends a multiple of the floc time after the rennet. */
interface EndFloc {
  by: "floc";
  factor: number;
}

/** A step that ends when the curd is judged so. */
interface EndJudged {
  by: "judged";
  judgement: any;
}

/** A step that ends by the clock, or when its person says so. */
interface EndOpen {
  by: "time" | "person";
}

/** A step that ends when a quantity has come so far. */
interface EndReading {
  by: "reading";
  quantity: string;
  at_least: number | null;
  at_most: number | null;
}

type EndsRole = "estimate" | "limit" | "band";

/** An entry, and when it counts. */
interface EntryAt {
  id: string;
  at_ms: number;
}

type Equipment = Record<string, any>;

/** Equipment with what was altered in it, and whether anything is known at all. */
interface EquipmentAltered {
  equipment: Equipment;
  is_any: boolean;
}

/** What a make begins with, as in the newest make before it. */
interface EquipmentBefore {
  equipment: Equipment;
  left_out: LeftOut[];
  make: string;
  name: string;
  vat: string | null;
  opened_ms: number;
  is_same_vat: boolean;
}

/** A row of what can be entered as equipment. */
interface EquipmentRow {
  name: string;
  group: string;
  kind: "number" | "count" | "choice" | "text";
  unit: string;
  units: string[];
  low: number | null;
  high: number | null;
  ask_low: number | null;
  ask_high: number | null;
  choices: string[] | null;
  sum: string | null;
  agreed: boolean;
  longest: number | null;
  beside: Beside | null;
}

/** One thing that was entered, with how it was typed and with whom it was agreed. */
interface EquipmentSet {
  value: any;
  typed?: string[];
  agreed_with?: string;
}

/** A figure of a recipe with its band, and how well it is known. */
interface Figure {
  value: number;
  unit: string;
  low?: number | null;
  high?: number | null;
  source: string;
  status: string;
  note?: string;
  by?: Binding;
  range_of?: "recipe" | "rule";
}

/** The floc test: since when, how long it took, and when that says to cut. */
interface Floc {
  added_ms: number | null;
  floc_ms: number | null;
  floc_s: number | null;
  factor: number;
  cut_ms: number | null;
  low_ms: number | null;
  high_ms: number | null;
  problem: "floc_too_early" | "floc_too_late" | null;
}

/** What a rule wants of a milk: by which section, and how well it is known. */
interface Following {
  wanted: string | null;
  section: string | null;
  status: string;
}

/** The longest time between readings that counts, and on whose word. */
interface HeatGap {
  gap_s: number;
  is_own: boolean;
  agreed_with: string | null;
  refused_s: number | null;
}

/** The hold that a verdict rests on, in the rule's own unit. */
interface HeatHold {
  row: string;
  min_temp: number;
  air_min_temp: number | null;
  start_ms: number;
  end_ms: number;
  held_s: number;
  needed_s: number;
}

/** What a hold asks of its thermometers, in one unit; no air where none is asked. */
interface HoldAsked {
  temp: number;
  air_temp: number | null;
}

/** What a thermometer of a hold showed last, in the quantity's own unit. */
interface HoldLast {
  quantity: string;
  value: number;
  at_ms: number;
  is_low: boolean;
  is_other_unit: boolean;
}

/**
 * What leads a hold that is to begin or runs.
 *
 * `together` is what one round reads; `asked` is by unit, "F" and "C"; `says` how it
 * stands, the line that matters first. `due_ms` is when the next round is due, and
 * it counts until `lost_ms`.
 */
interface HoldLead {
  rule: string;
  is_own: boolean;
  asked: Record<string, HoldAsked | null>;
  gap: HeatGap;
  together: string[];
  rounds: HoldRound[];
  last: HoldLast[];
  due_ms: number | null;
  lost_ms: number | null;
  end_ms: number | null;
  is_whole: boolean;
  says: Keyed[];
}

/**
 * When one thermometer of a hold is read next, and what it showed last.
 *
 * The next counts with the last until `lost_ms`; `shown` is the last as it was typed,
 * in its own unit.
 */
interface HoldRound {
  quantity: string;
  every_s: number;
  gap_s: number;
  due_ms: number | null;
  lost_ms: number | null;
  last: ReadingLast | null;
  shown: Shown | null;
}

/** Who has a step in hand; `from` is who had it before. */
interface Holder extends Who {
  from: Said | null;
  stale: "idle" | "shift" | null;
  stale_ms: number;
}

type InBand = "below" | "above" | "in_band";

/** What goes into the milk. */
interface Ingredient {
  key: string;
  title: Words;
  unit: string;
  dose: RecipeDose;
  tolerance_frac?: number;
  optional?: boolean;
}

/** What is judged of the curd, from when on, and the last judgement. */
interface Judge {
  choices: string[];
  from_ms: number | null;
  last: Judgement | null;
}

/**
 * The last reading of a target, against its band.
 *
 * `since` is the first of the unbroken row of readings with the same verdict.
 */
interface JudgedReading extends ReadingLast {
  verdict: InBand;
  since: EntryAt;
}

/** What somebody judged the curd to be. */
interface Judgement extends Who {
  judgement: string;
}

type Keyed = Record<string, any>;

/** One of several things that a rule wants. */
interface KeyedFollowing extends Following {
  key: string;
}

/** What a make knows of an input, and whose word that is. */
interface Known {
  from: string;
  name: string;
  value: any;
  unit: string;
}

/** The last value of a quantity, from whichever entry tells it. */
interface LastValue {
  value: any;
  at_ms: number;
}

/** How long a step takes. */
interface Lasts {
  value_s: number;
  low_s: number;
  high_s: number;
  origin: Origin | null;
}

/** Why an entry changes nothing of its make, and the title of its step. */
interface LeadsNowhere {
  key: "other_route" | "no_route";
  title: Words | null;
}

/** What was not carried over, and why. */
interface LeftOut {
  field: string;
  key: string;
  limit: any;
}

type Level = "act" | "check";

/**
 * One line of the batch record, with what it said before corrections.
 *
 * `proved` is None where no proof is asked for. Of kind "unread" the data are
 * {said, why}: the entry is kept and cannot be read.
 */
interface LogLine {
  id: string;
  kind: string;
  at_ms: number;
  entered_ms: number;
  by: string;
  device: string;
  step: string | null;
  data: Record<string, any>;
  original: Original | null;
  corrections: Correction[];
  struck: Reasoned | null;
  late_entry_s: number | null;
  clock_off_s: number | null;
  later_of: string | null;
  same: boolean | null;
  proved: Proved | null;
  leads_nowhere: LeadsNowhere | null;
}

/** When the step is due to end. */
interface MainCountdown {
  kind: "countdown";
  due_ms: number;
}

/** What is to be added next. */
interface MainDose {
  kind: "dose";
  ingredient: string;
  value: number;
  unit: string;
}

/** No number: what is to be done. */
interface MainInstruction {
  kind: "instruction";
}

type MainNumber = MainDose | MainWater | MainTarget | MainCountdown | MainInstruction;

/** What a quantity should come to. */
interface MainTarget {
  kind: "target";
  quantity: string;
  value: number;
  last: ReadingLast | null;
}

/** The water to pour next, and how hot. */
interface MainWater {
  kind: "water";
  part: "first" | "rest";
  value: number;
  temp_c: number | null;
}

/** What was opened: which recipe, which milk, where, and how it stands. */
interface Make {
  id: string;
  name: string;
  batch: string;
  practice: boolean;
  recipe_id: string;
  recipe_version: number;
  recipe_title: Words;
  milk_l: number;
  milk_measured_l: number | null;
  milk_kg: number;
  milk_from: string;
  vat: string | null;
  opened_ms: number;
  opened_by: string;
  state: MakeState;
  is_open: boolean;
  holds: Reasoned[];
  moulds: Mould[];
  sizes: string[];
  store_step: string | null;
  before_store: BeforeStore | null;
  milk: MilkView | null;
}

type MakeState = "running" | "held" | "closed" | "abandoned" | "discarded";

/** A make as the board lists it. */
interface MakeSummary {
  id: string;
  name: string;
  batch: string;
  practice: boolean;
  state: MakeState;
  is_open: boolean;
  on_now: boolean;
  vat: string | null;
  opened_ms: number;
  recipe_title: Words;
  store_step: string | null;
  can_brine: boolean;
  focus: StepSummary | null;
  running: StepSummary[];
  alerts: Alert[];
  matters: Matter[];
  day: TimeSpan;
  whole: TimeSpan;
  band: BandStage[];
  last_word_ms: number | null;
  unread: Unread;
}

/**
 * One thing that is wrong, missing or awaited, told once.
 *
 * Its words are `matter.<key>`; what to do is `do` or `matter_do.<key>`. Of level
 * "wait" nothing is wrong: it stops, and is told only to who would go past it.
 * `rule` is the section that decides, `source` where it was read, `status` how it is
 * known: "read", "secondary" or "setting". It is acknowledged
 * and rings as `alert`, told since `told_ms`: by the name of the reading that told of
 * it first, if one did.
 */
interface Matter {
  id: string;
  key: string;
  kind: MatterKind;
  step: string;
  since_ms: number | null;
  level: MatterLevel;
  reasons: Keyed[];
  rests_on: string[];
  stops: Stop[];
  ways: Way[];
  do: Words | null;
  decided: Decided | null;
  alert: string;
  told_ms: number | null;
  acknowledged: Said | null;
  rule: string;
  source: string;
  status: string;
}

type MatterKind = "acid" | "check_due" | "curing" | "hold" | "laboratory" | "recorder" | "test" | "thermometer";

type MatterLevel = "act" | "check" | "wait";

type MendForm = "number" | "count" | "text" | "reading" | "equipment";

/** A field of an entry that can be put right; longest in letters of a text. */
interface Mendable {
  name: string;
  form: MendForm;
  unit: string | null;
  longest: number | null;
}

/**
 * What the milk of a make is, with why and since when that is known.
 *
 * `class` is a ClassName; `step` is the hold that it rests on.
 */
interface MilkClass {
  class: string;
  why: string;
  since_ms: number;
  treatment: Treatment;
  step: string | null;
}

/** What follows from what a milk is; `curing_days` is None where none are asked. */
interface MilkFollows {
  curing_days: number | null;
  curing_min_temp: Record<string, number> | null;
  curing_by: Following;
  tests: KeyedFollowing[];
  label: KeyedFollowing;
  release_role: string;
}

/** The milk of a make: how it is treated, what it is by now, what follows. */
interface MilkView {
  is: MilkClass;
  treatment: TreatmentView;
  follows: MilkFollows | null;
}

/** Wheels of one size; `suggested` by the milk that came, None without a plan. */
interface Mould {
  size: string;
  title: Words;
  planned: number | null;
  suggested: number | null;
  moulded: number;
}

/** A move of one act that its band allows. */
interface Move {
  act: number;
  to_ms: number;
  way: "later" | "earlier";
  clears: boolean;
}

/** A figure that a sentence names: of a quantity, or by its unit alone. */
interface NamedFigure {
  name: string;
  quantity: string | null;
  unit: string | null;
  value: number;
}

/** What to do now, in one sentence; `figures` fill its names in braces. */
interface Now {
  text: Words;
  figures: NamedFigure[];
}

/** A quantity with a figure for each size: `unsized` where the last names none. */
interface OfSizes {
  quantity: string;
  sizes: WheelSize[];
  is_judged: boolean;
  unsized: ReadingLast | null;
}

/** A value that is shown to be tapped by whoever has just read it, and why. */
interface Offer {
  value: number;
  why: "last" | "wanted";
}

/** A figure that the recipe leaves to the sum that it names. */
interface OpenFigure {
  value: null;
  unit: string;
  low?: null;
  high?: null;
  source: string;
  status: string;
  note?: string;
  by: Binding;
}

/**
 * Where a figure comes from that is not the recipe's plain word.
 *
 * Where its sum should have answered and did not, `fell_back` says why, `needs`
 * names the inputs that it lacks, and the recipe's own figure stands.
 */
interface Origin {
  from: "person" | "sum" | "recipe";
  sum: string | null;
  status: string;
  estimate: Uncertain | null;
  needs: string[];
  fell_back: string | null;
  own: number | null;
}

/** What an entry said before it was put right. */
interface Original {
  at_ms: number;
  data: Record<string, any>;
}

/** What a step itself has to say of one of its hazards. */
interface OwnCaution {
  hazard: string;
  do: Words;
}

/** A hold by the maker's own figures, in each unit by itself: "F" and "C". */
interface OwnHold {
  by: "own";
  temp: Record<string, Figure>;
  air_rise?: Record<string, Figure>;
  gap_max_s: Figure;
  why: Words;
}

/**
 * What is read in a step, of one size of wheel where each wants its own.
 *
 * What `is_due` is one round of entry, in this order. `last` is the newest of the
 * whole make.
 */
interface Pad {
  quantity: string;
  size: string | null;
  is_due: boolean;
  last: LastValue | null;
  offers: Offer[];
}

/** What is wrong with one field, as a key that the page puts into words. */
interface Problem {
  field: string | null;
  key: string;
  limit: any;
}

type Proved = "pin" | "phone" | "none" | "old_pin" | "accepted";

type RangeOf = "estimate" | "nine_in_ten" | "usual" | "rule" | "recipe";

/** Who looks at a make and may work in it, and the time zone there. */
interface Reader {
  person: string;
  tz_min: number;
}

/** The last reading of a step. */
interface ReadingLast extends LastValue {
  id: string;
}

/**
 * A reading that a step wants; `due_ms` None while nothing is wanted.
 *
 * One that counts only until `lost_ms` has that instant; one that is read together
 * with another, in one round, names it in `goes_with`.
 * It may be overdue by `grace_s` before it is an alert.
 */
interface ReadingWanted {
  quantity: string;
  when: When;
  every_s: number | null;
  required: boolean;
  due_ms: number | null;
  overdue_s: number;
  grace_s: number;
  count: number;
  last: ReadingLast | null;
  lost_ms: number | null;
  goes_with: string | null;
}

/** An entry with why; None where nothing departs from the recipe. */
interface Reasoned extends Who {
  why: string | null;
}

/** A recipe; a make keeps the one that it was opened with. */
interface Recipe {
  schema: number;
  id: string;
  version: number;
  title: Words;
  about?: Words;
  family?: string;
  sources: Record<string, any>;
  milk: RecipeMilk;
  yield_frac: Figure;
  moulds?: RecipeMould[];
  ingredients?: Ingredient[];
  figures?: Record<string, Figure>;
  steps: RecipeStep[];
  curve?: RecipeCurve;
  gates?: RecipeGate[];
}

/** Ways of a recipe of which one is gone; its usual one first. */
interface RecipeChoice {
  choice: string;
  options: RecipeOption[];
}

/** The recipe's own pH over time, from the begin of a step on. */
interface RecipeCurve {
  start_step: string;
  times_s: number[];
  phs: number[];
  source: string;
  status: string;
  note?: string;
}

/** How much of an ingredient for how much milk. */
interface RecipeDose {
  per: string;
  amount: Figure;
}

/** What to do where a step drifts in one way; of one matter of it, or of all. */
interface RecipeDrift {
  form: string;
  quantity?: string;
  do: Words;
}

/** What ends a step: time, a person, a reading, the floc test, or the curd. */
interface RecipeEnd {
  by: string;
  quantity?: string;
  at_least?: Figure;
  at_most?: Figure;
  judgement?: string[];
  from_step?: string;
}

/** What is waited for, where, and what it stops: see `recipe.check.gates`. */
interface RecipeGate {
  key: string;
  watch: string;
  step: string;
  from_step?: string;
  quantity?: string;
  rule?: string;
  row?: string;
  window_s?: Figure;
  instead?: RecipeInstead;
  stops: RecipeStop[];
  do?: Words;
}

/** What is read where a gate's own quantity is not. */
interface RecipeInstead {
  quantity: string;
  least?: Figure;
}

/** What is judged of the curd, and from which part of the time on. */
interface RecipeJudge {
  choices: string[];
  from_frac?: number;
}

/** The milk that a recipe is for. */
interface RecipeMilk {
  unit?: string;
  low_l: number;
  high_l: number;
  fat_frac?: Figure;
  heat_class?: string;
  treatments?: Treatment[];
  usual_treatment?: Treatment;
}

/** A size of wheel; its share of the milk where it is one of several. */
interface RecipeMould {
  size: string;
  title: Words;
  wheel_kg: Figure;
  diameter_m: Figure;
  height_m: Figure;
  share_frac: Figure;
}

/** One way of a choice, by the title of its first step. */
interface RecipeOption {
  option: string;
  title: Words;
}

/** A reading that a step wants: at its begin, during it or at its end. */
interface RecipeReading {
  quantity: string;
  instead_of?: string | null;
  when: When;
  every_s?: number | null;
  required?: boolean;
}

/** One step: what it waits on, how it ends, what is done, read and added. */
interface RecipeStep {
  key: string;
  title: Words;
  after?: string[];
  end: RecipeEnd;
  now?: Words[];
  do?: Words[];
  place?: string;
  stage?: string;
  round?: number;
  rounds?: number;
  lasts?: Figure;
  targets?: RecipeTarget[];
  readings?: RecipeReading[];
  adds?: string[];
  cautions?: string[];
  own_cautions?: OwnCaution[];
  drift?: RecipeDrift[];
  judge?: RecipeJudge;
  sums?: string[];
  size?: string;
  turns?: RecipeTurn[];
  mould?: boolean;
  closes_day?: boolean;
  heat_treatment?: boolean | OwnHold;
  rule?: string;
  choice?: string;
  option?: string;
  treatments?: Treatment[];
  by_treatment?: Record<string, Record<string, any>>;
}

/** What a gate stops; `when` limits it to words of its watcher. */
interface RecipeStop {
  what: string;
  step?: string;
  when?: string[];
}

/** What a quantity should be in a step. */
interface RecipeTarget {
  quantity: string;
  size?: string | null;
  instead_of?: string | null;
  when?: "end" | null;
  figure: Figure | OpenFigure;
}

/** How often wheels are turned, and until when. */
interface RecipeTurn {
  every: Figure;
  until?: Figure;
}

/** One figure that an answer rests on. */
interface RestsOn {
  from: string;
  name: string;
  value: any;
  unit: string;
  status: string;
  source: string | null;
}

/** What is to be heard now, the most urgent first. */
interface Ring {
  ids: string[];
  priority: number | null;
  waits_ms: number | null;
  begins?: boolean;
  memory?: RingMemory;
}

/** What the question for the next ring takes from the last one. */
interface RingMemory {
  soundings: Sounding[];
  ids: string[];
}

/** Who, and when. */
interface Said {
  by: string;
  at_ms: number;
}

/** How a watcher's fact stands; `rests_on` are the entries that it goes by. */
interface Seen {
  says: string;
  since_ms: number | null;
  reasons: Keyed[];
  rests_on: string[];
}

type Sense = "later" | "earlier";

/** That an alarm was put aside, until when and why. */
interface Shelved extends Said {
  id: string;
  until_ms: number;
  why: string;
}

/** What a thermometer showed; `typed` None where that was in another unit. */
interface Shown {
  typed: number | null;
  unit: string;
}

type Side = "below" | "within" | "above";

/** One sign of a hazard, which the page draws. */
interface Sign {
  kind: "warning" | "mandatory";
  pictogram: string;
}

/** A ring that began within the hour, and whether somebody had asked for it. */
interface Sounding {
  at_ms: number;
  asked: boolean;
}

type SpanName = "hour" | "day" | "all";

/** What an answer stands on, see `sums.standing`. */
interface Standing {
  basis: Basis;
  is_figure: boolean;
  names: string[];
}

/**
 * A step where work is at hand, or asked for by itself: `full` is true.
 *
 * `size` is the step's own size of wheel; without one, those of `make.sizes` hold.
 * `turn_wheels` is how many there are to turn, where they can be.
 */
interface Step extends BriefStep {
  now: Now;
  do: Words[];
  lasts: Lasts | null;
  end: StepEnd;
  targets: Target[];
  readings: ReadingWanted[];
  by_size: OfSizes[];
  adds: Add[];
  water: WashWater | null;
  judge: Judge | null;
  floc: Floc | null;
  moulds: Mould[] | null;
  size: string | null;
  can_turn: boolean;
  turn_wheels: number | null;
  turn: Turn | null;
  cautions: Caution[];
  drift: RecipeDrift[];
  task: Task | null;
  verdict?: Verdict | null;
  hold?: HoldLead | null;
  chart: ChartBeside | null;
  end_blockers: EndBlocker[];
  button: StepButton;
  pads: Pad[];
  main: MainNumber;
}

/** The one large button of a step; of one that is stopped, arg is the matter. */
interface StepButton {
  act: "begin" | "reading" | "add" | "mould" | "judge" | "end" | "stopped" | "none";
  arg: string | null;
}

/** What a person has still to see in this shift, at a step or at a reading. */
interface StepCautions {
  step: string | null;
  quantity: string | null;
  stands: "before" | "beside";
  owed: Caution[];
}

type StepEnd = EndOpen | EndJudged | EndFloc | EndReading;

type StepMark = "waiting" | "ready" | "running" | "due" | "late" | "stopped" | "done" | "skipped";

type StepStatus = "waiting" | "ready" | "running" | "ended" | "skipped";

/** A step as the board lists it. */
interface StepSummary {
  key: string;
  title: Words;
  status: StepStatus;
  mark: StepMark;
  due_ms: number | null;
  timing: Timing;
  main: MainNumber;
  button: StepButton;
  place: string | null;
  round: number | null;
  rounds: number | null;
  task: Task | null;
}

/** What is stopped: the begin or end of a step, or something of the whole make. */
interface Stop {
  what: StopWhat;
  step: string | null;
}

type StopWhat = "begin" | "end" | "close" | "release";

/** What an input is taken for while nobody says, and whose word that is. */
interface SumDefault {
  value: any;
  status: string;
  source: string;
  low: number | null;
  high: number | null;
}

/** What a sum asks for. */
interface SumInput {
  name: string;
  kind: "number" | "count" | "choice" | "series";
  unit: string;
  units: string[];
  low: number | null;
  high: number | null;
  ask_low: number | null;
  ask_high: number | null;
  choices: string[] | null;
  columns: SumInput[] | null;
  default: SumDefault | null;
  optional: boolean;
  hidden: boolean;
  by_hand: boolean;
  rises: boolean;
}

/** What a sum gives; `ends` by what a value is of, where that differs. */
interface SumOutput {
  name: string;
  unit: string | AsRead;
  role: EndsRole;
  headline: boolean | "first";
  ends: string | AsRead | Record<string, string>;
  sense: Sense | null;
  told_by: string | null;
  called: Called;
  range_of: RangeOf;
}

/**
 * What is wrong with a value of a sum.
 *
 * `unit` is that of value and limit; `of` the formula's own quantity where the field
 * is only what it follows from; `from` "formula" where the value cannot be beside
 * the others; `figures` what else the sentence speaks of.
 */
interface SumProblem extends Problem {
  from: "input" | "formula";
  value: any;
  unit: string;
  of: string | null;
  figures: Record<string, Amount>;
}

/** A sum of the catalogue. */
interface SumRow {
  key: string;
  topic: string;
  inputs: SumInput[];
  outputs: SumOutput[];
}

/** A topic of the catalogue with the keys of its sums. */
interface SumTopic {
  key: string;
  sums: string[];
}

/**
 * One value of an answer; what a verdict read, and its ends, in `ends_unit`.
 *
 * `bar` where it is drawn: against the least that a rule asks, or in its band.
 */
interface SumValue {
  name: string;
  value: any;
  low: any;
  high: any;
  read: any;
  unit: string;
  ends_unit: string;
  as_read: boolean;
  of: string | null;
  nth: number | null;
  across_m: number | null;
  role: EndsRole;
  headline: boolean;
  sense: Sense | null;
  called: Called;
  range_of: RangeOf;
  repeats: string | null;
  bar: Bar | null;
}

/** A brine tank: what is in it by the account, and what it wants. */
interface Tank {
  id: string;
  name: string;
  opened_ms: number;
  mass_kg: number;
  salt_kg: number;
  salt_frac: number;
  temp_c: number | null;
  measured: TankMeasured | null;
  drift_frac: number | null;
  water_salt_ratio: WaterSaltRatio;
  loads: TankLoad[];
  wanted_frac: number;
  band: BrineBand | null;
  salt_to_add_kg: number | null;
  water_to_add_kg: number | null;
  outside: ValueProblem[];
  notes: Keyed[];
}

/**
 * Wheels in a brine tank; `out_ms` None while they are in it.
 *
 * Of those still inside, `time` is how much of their days is over, `uptake` how much
 * of the salt that they will have taken by then; None where that is not known.
 */
interface TankLoad {
  id: string;
  make: string;
  size: string;
  wheels: number;
  mass_kg: number;
  in_ms: number;
  due_ms: number | null;
  out_ms: number | null;
  out_kg: number | null;
  basis: string | null;
  salt_kg: number;
  water_kg: number;
  salt_due_kg: number | null;
  time: Bar | null;
  uptake: Bar | null;
}

/** The last reading of a tank's strength, as typed too. */
interface TankMeasured {
  id: string;
  at_ms: number;
  value: number;
  typed: string | null;
  typed_unit: string | null;
}

/**
 * What a quantity should be, and what it was last.
 *
 * `value` None where only a sum could tell it and cannot yet: see `origin`.
 */
interface Target {
  quantity: string;
  size: string | null;
  value: number | null;
  low: number | null;
  high: number | null;
  range_of: RangeOf;
  unit: string;
  source: any;
  status: string;
  origin: Origin | null;
  last: JudgedReading | null;
}

/** Who took a step in hand first, and who else has it. */
interface Task extends Holder {
  others: Holder[];
}

/** When a part of the make ends, as planned and as expected now. */
interface TimeSpan {
  planned_end_ms: number;
  expected_end_ms: number;
  late_s: number;
  state: "late" | "early" | "on_time";
}

/** A stand-alone timer. */
interface Timer {
  id: string;
  label: string;
  step: string | null;
  start_ms: number;
  due_ms: number;
  by: string;
  stopped_ms: number | null;
}

/** How a step stands against its own band of time. */
interface Timing {
  state: "not_begun" | "late" | "early" | "on_time";
  by_s: number;
}

/** What two phones recorded of one act. */
interface ToJudge {
  step: string;
  kind: string;
  first: Who;
  later: Who;
}

type Treatment = "pasteurised" | "heat_treated" | "raw";

/** Another treatment that a recipe allows, and what speaks against it now. */
interface TreatmentChoice {
  treatment: Treatment;
  problem: Problem | null;
  hold_ended_ms: number | null;
}

/** How the milk of a make is treated, on whose word, and what else it may be. */
interface TreatmentView {
  treatment: Treatment;
  usual: Treatment;
  said: Reasoned;
  was_changed: boolean;
  others: TreatmentChoice[];
}

/** When wheels want turning again, and how often they do. */
interface Turn {
  due_ms: number;
  every_s: number;
  overdue_s: number;
}

/** How uncertain a value is that a sum has worked out. */
interface Uncertain {
  low: number | null;
  high: number | null;
}

/** How many entries are kept and cannot be read here. */
interface Unread {
  newer: number;
  unsound: number;
}

/** What speaks against a value. */
interface ValueProblem extends Problem {
  value?: any;
}

/**
 * The verdict on a step whose recipe row has "heat_treatment".
 *
 * `rule` is "own_hold" where it goes by the maker's own figures.
 *
 * `start_ms` is since when the hold's clock runs.
 */
interface Verdict {
  class: string;
  rule: string;
  unit: "C" | "F";
  meaning: string;
  reasons: Keyed[];
  warnings: Keyed[];
  hold: HeatHold | null;
  if_not_met: string | null;
  start_ms: number;
  gap: HeatGap;
  chart: ChartField[];
}

/**
 * One make as a screen sees it; `cautions` where it is asked for a person.
 *
 * `next_change_ms` says when it changes by itself: screens count down to instants
 * for show and ask again then. `left_open` are steps that could begin behind a
 * running one. `band` are the stages of a make that runs, in order.
 */
interface View {
  make: Make;
  now_ms: number;
  next_change_ms: number | null;
  focus: string | null;
  left_open: string[];
  steps: Step[];
  timers: Timer[];
  countdowns: Countdown[];
  alerts: Alert[];
  matters: Matter[];
  to_judge: ToJudge[];
  day: TimeSpan;
  whole: TimeSpan;
  band: BandStage[];
  log: LogLine[];
  unread: Unread;
  cautions?: StepCautions[];
}

/** A row of the room's display: a deadline, or a make that waits for nothing. */
interface WallRow {
  id: string;
  make: string;
  make_name: string;
  vat: string | null;
  kind: string | null;
  mark: StepMark | null;
  title: Words | null;
  label: string | null;
  due_ms: number | null;
}

/**
 * The water of a wash: how much in two parts, how hot, and where it stops.
 *
 * `rest_l` is None until the curd was read after the first part, `loss_k` until an
 * earlier wash showed what is lost. `refused` says why none is worked out: then the
 * recipe's own litres stand.
 */
interface WashWater {
  water_l: number;
  low_l: number | null;
  high_l: number | null;
  first_l: number | null;
  after_first_c: number | null;
  added_l: number;
  rest_l: number | null;
  water_temp_c: number | null;
  is_read: boolean;
  stop_c: number | null;
  loss_k: number | null;
  refused: string | null;
}

/** Water given off for salt taken up: the room's own figure or the usual one. */
interface WaterSaltRatio {
  from: string;
  value: number;
  low: number;
  high: number;
  status: string;
}

/**
 * A way that a rule leaves open, the least role that may go it, and all that may.
 *
 * `lifts` names what is stopped no longer once it is decided so.
 */
interface Way {
  way: string;
  role: string;
  roles: string[];
  needs_why: boolean;
  lifts: string[];
  event: WayEvent | null;
}

/** The entry that decides in place of `matter_decided`; why is added to its data. */
interface WayEvent {
  kind: string;
  data: Record<string, any>;
}

/** A size of wheel by name. */
interface WheelSize {
  size: string;
  title: Words;
}

type When = "begin" | "during" | "end";

/** Which entry, when, and whose. */
interface Who extends Said {
  id: string;
}

type Words = Record<string, string>;
