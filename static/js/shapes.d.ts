// What travels between core, server and screens, as the page's JSDoc names it, in
// the order of the names. DEVELOPERS.md says what each means; here stands what is in
// it. Instants [ms] are the server's; what the core answers has null, never undefined,
// where it knows nothing.

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
  added: (Who & {
    amount: number;
    unit: string;
    lot: string | null;
    verdict: "below" | "above" | "in_band" | "no_plan";
  })[];
  total: number;
  optional: boolean;
  done: boolean;
}

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
  acknowledged: Said | null;
  shelved: (Said & { id: string; until_ms: number; why: string }) | null;
  escalates_ms: number | null;
  escalated: boolean;
  returned_ms: number | null;
}

/** What rings and what will; `makes`, `walls` and the rest only from the server. */
interface Alarms {
  now_ms: number;
  next_change_ms: number | null;
  alarms: Alarm[];
  deadlines: Deadline[];
  makes?: Pick<MakeSummary, "id" | "name" | "batch" | "vat" | "state">[];
  walls?: Wall[];
  escalate_min?: number;
}

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
  do: Words | null;
  since_ms: number;
  acknowledged: Said | null;
}

/** The answer to one sum; `known` and `of` only to one of a step. */
interface Answer {
  key: string;
  values: SumValue[];
  rests_on: RestsOn[];
  status: string | null;
  notes: ({ key: string } & Record<string, any>)[];
  problems: Problem[];
  ask: Problem[];
  missing: string[];
  known?: { name: string; value: any; unit: string; from: string }[];
  of?: string | null;
}

interface Board {
  now_ms: number;
  next_change_ms: number | null;
  makes: MakeSummary[];
  due: Due[];
  clashes: Clash[];
  clash_count: number;
  broken: Broken[];
  unread: Unread;
}

/**
 * A step as the list of steps shows it. The steps of a View are typed as whole ones:
 * who reads more than this of one looks at `full` or its status first.
 */
interface BriefStep {
  full: boolean;
  key: string;
  title: Words;
  place: string | null;
  round: number | null;
  rounds: number | null;
  status: StepStatus;
  waits_on: string[];
  planned_begin_ms: number;
  planned_end_ms: number;
  expected_begin_ms: number;
  expected_end_ms: number;
  begun: Who | null;
  ended: (Who & { why: string | null }) | null;
  skipped: (Who & { why: string | null }) | null;
  due_ms: number | null;
  due_basis: "floc" | "lasts" | null;
  timing: Timing;
}

/** A make or tank that cannot be shown whole. */
interface Broken {
  make: string;
  is_tank: boolean;
  name: string | null;
  batch: string | null;
  vat: string | null;
  practice: boolean;
  opened_ms: number | null;
  what: string;
  why: "fault" | "newer" | "unsound";
  since_ms: number | null;
  problems: Problem[];
  fault: string | null;
}

/** A figure of one recipe over its makes. */
interface Chart {
  key: string;
  unit: string;
  points: { make: string; batch: string; at_ms: number; value: number }[];
  chart: {
    verdict: "not_assessed" | "like_the_others" | "unlike_the_others";
    count: number;
    needed: number;
    limits: {
      mean: number;
      low: number;
      high: number;
      mean_range: number;
      range_high: number;
      spread: number;
    } | null;
    beyond: number[];
    runs: number[];
  } | null;
  average: { values: number[]; low: number; high: number; beyond: number[] } | null;
}

interface Clash {
  at_ms: number;
  acts: Act[];
  move: {
    act: number;
    to_ms: number;
    way: "later" | "earlier";
    clears: boolean;
  } | null;
}

/** What a make not opened yet would clash with. */
interface ClashesIf {
  clashes: Clash[];
  count: number;
  better: { start_ms: number; count: number } | null;
}

/** How an entry was put right. */
interface Correction extends Who {
  set: Record<string, any>;
  before: Record<string, any>;
  why: string;
}

interface Curve {
  make: string;
  now_ms: number;
  series: { quantity: string; points: CurvePoint[] }[];
  bands: CurveBand[];
  steps: CurveStep[];
  acid: {
    start_ms: number;
    is_real: boolean;
    points: { at_ms: number; ph: number; low_ph: number; high_ph: number }[];
  } | null;
  spans: Record<"hour" | "day" | "all", [number, number]>;
}

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

interface CurvePoint {
  id: string;
  at_ms: number;
  value: number;
  step: string | null;
  low: number | null;
  high: number | null;
  verdict: "below" | "above" | "in_band" | null;
}

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
  label: string | null;
  due_ms: number;
  rings: boolean;
}

interface Dose {
  value: number;
  low: number | null;
  high: number | null;
  unit: string;
  [more: string]: any;
}

interface Due {
  make: string;
  make_name: string | null;
  practice: boolean;
  step: string | null;
  title: Words;
  round: number | null;
  rounds: number | null;
  what: "step_begin" | "step_end" | "reading" | "turn" | "timer" | "unload";
  timer: string | null;
  label: string | null;
  quantity: string | null;
  tank: string | null;
  load: string | null;
  wheels: number | null;
  size: string | null;
  due_ms: number;
  late_ms: number | null;
  level: "later" | "due" | "check";
  task: Task | null;
}

/** An event as it is recorded, sent and filed. */
interface Entry {
  id: string;
  make: string | null;
  device: string | null;
  person: string | null;
  tz_min: number;
  boot: string;
  at_ms: number;
  entered_ms: number;
  mono_ms: number;
  off_ms: number;
  off_q_ms: number | null;
  kind: string;
  v: number;
  ref: string | null;
  data: Record<string, any>;
  proof?: any;
  proof_state?: string;
}

/** What a creamery has: { key: value } with how it was typed, [typed, unit]. */
interface Equipment {
  typed: Record<string, [string, string]>;
  gap_agreed_with?: string;
  [key: string]: any;
}

/** What a make begins with, as in the newest make before it. */
interface EquipmentBefore {
  equipment: Equipment;
  left_out: (Problem & { field: string })[];
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
}

/** One value of the equipment as it was entered. */
interface EquipmentSet {
  value: any;
  typed?: [string, string];
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
  [more: string]: any;
}

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

interface Judge {
  choices: string[];
  from_ms: number | null;
  last: (Who & { judgement: string }) | null;
}

/** A wrapped key as the server hands it out. */
interface KnownPin extends Sealed {
  device: string | null;
  set_ms: number;
}

/** The last value of a quantity, from whichever entry tells it. */
type LastValue = Pick<ReadingLast, "value" | "at_ms">;

interface LogLine {
  id: string;
  kind: string;
  at_ms: number;
  entered_ms: number;
  by: string;
  device: string;
  step: string | null;
  data: Record<string, any>;
  original: { at_ms: number; data: Record<string, any> } | null;
  corrections: Correction[];
  struck: (Who & { why: string }) | null;
  late_entry_s: number | null;
  clock_off_s: number | null;
  later_of: string | null;
  same: boolean | null;
  proved: "pin" | "phone" | "none" | "old_pin" | "accepted" | null;
}

/** The one number that matters in a step; what is in it follows its kind. */
type MainNumber =
  | { kind: "dose"; ingredient: string; value: number; unit: string }
  | { kind: "target"; quantity: string; value: number; last: ReadingLast | null }
  | { kind: "countdown"; due_ms: number }
  | { kind: "instruction" };

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
  holds: (Who & { why: string })[];
  moulds: Mould[];
  sizes: string[];
}

type MakeState = "running" | "held" | "closed" | "abandoned";

/** A make as the board lists it. */
interface MakeSummary {
  id: string;
  name: string;
  batch: string;
  practice: boolean;
  state: MakeState;
  is_open: boolean;
  vat: string | null;
  opened_ms: number;
  recipe_title: Words;
  focus: StepSummary | null;
  running: StepSummary[];
  alerts: Alert[];
  day: TimeSpan;
  whole: TimeSpan;
  last_word_ms: number | null;
  unread: Unread;
}

/** Who this phone is paired to. */
interface Me {
  person: Person;
  device: string;
}

interface Mould {
  size: string;
  title: Words;
  planned: number | null;
  moulded: number;
}

/** Someone of the creamery; units and language null until they chose. */
interface Person {
  id: string;
  name: string;
  role: Role;
  active?: boolean;
  language?: string | null;
  temp_unit?: string | null;
  volume_unit?: string | null;
  mass_unit?: string | null;
  pressure_unit?: string | null;
}

/** What the server tells of the open makes at a glance. */
interface Picture {
  now_ms: number;
  next_change_ms: number | null;
  makes: MakeSummary[];
  broken: Broken[];
  phones: { device: string; name: string; person: string; heard_ms: number }[];
}

/** What the core or the server says against a field; `text` of a sum's. */
interface Problem {
  field: string | null;
  key: string;
  limit: any;
  value?: any;
  text?: string;
}

/** An entry as the server tells it, with what it found of its proof. */
interface PulledRow {
  n: number;
  recv_ms: number;
  event: Recorded;
  receipt?: any;
  proof_state?: string | null;
}

interface ReadingLast {
  id: string;
  value: any;
  at_ms: number;
  verdict?: "below" | "above" | "in_band";
}

/** A reading that a step wants. */
interface ReadingWanted {
  quantity: string;
  when: "begin" | "during" | "end";
  every_s: number | null;
  required: boolean;
  due_ms: number | null;
  overdue_s: number;
  count: number;
  last: ReadingLast | null;
}

/** How a person reads figures and texts, each set. */
interface Reads {
  language: string;
  temp_unit: string;
  volume_unit: string;
  mass_unit: string;
  pressure_unit: string;
}

/** A recipe; what its parts may hold is its author's and checked by the core. */
interface Recipe {
  id: string;
  version: number;
  title: Words;
  steps: any[];
  ingredients?: any[];
  moulds?: any[];
  figures?: Record<string, any>;
  curve?: any;
  [more: string]: any;
}

/** An entry that is on disk and counted. */
interface Recorded extends Entry {
  seq: number;
}

/** One figure that an answer rests on. */
interface RestsOn {
  name: string;
  value: any;
  unit: string;
  from: string;
  status: string;
  source: string | null;
}

/** What is to be heard now. */
interface Ring {
  ids: string[];
  priority: number | null;
  waits_ms: number | null;
  begins?: boolean;
  memory?: RingMemory;
}

/** What the question for the next ring takes from the last one. */
interface RingMemory {
  soundings: { at_ms: number; [more: string]: any }[];
  ids: string[];
}

type Role = "owner" | "maker" | "helper" | "viewer";

/** Who, and when. */
interface Said {
  by: string;
  at_ms: number;
}

/** A person's signing key, closed by the PIN. */
interface Sealed {
  key: string;
  person: string;
  public: string;
  salt: string;
  rounds: number;
  wrapped: string;
}

/** What the server said of an entry sent to it. */
interface SentVerdict {
  id: string;
  st: "stored" | "duplicate" | "needs_look";
  n: number;
  why?: any;
}

/** A step where work is at hand, or asked for by itself: `full` is true. */
interface Step extends BriefStep {
  do: Words[];
  lasts: { value_s: number; low_s: number; high_s: number } | null;
  end:
    | { by: "time" | "person" }
    | { by: "judged"; judgement: any }
    | { by: "floc"; factor: number }
    | {
        by: "reading";
        quantity: string;
        at_least: number | null;
        at_most: number | null;
      };
  targets: Target[];
  readings: ReadingWanted[];
  adds: Add[];
  judge: Judge | null;
  floc: Floc | null;
  moulds: Mould[] | null;
  size: string | null;
  cautions: string[];
  drift: { form: string; do: Words }[];
  task: Task | null;
  verdict?: Verdict | null;
  end_blockers: { key: string; arg: any }[];
  button: StepButton;
  main: MainNumber;
}

/** The one large button of a step. */
interface StepButton {
  act: "begin" | "reading" | "add" | "mould" | "judge" | "end" | "none";
  arg: string | null;
}

type StepStatus = "waiting" | "ready" | "running" | "ended" | "skipped";

/** A step as the board lists it. */
type StepSummary = Pick<
  Step,
  | "key"
  | "title"
  | "status"
  | "due_ms"
  | "timing"
  | "main"
  | "button"
  | "place"
  | "round"
  | "rounds"
  | "task"
>;

/** A row of a table that was typed: a cell left out is undefined. */
type SumCells = Record<string, string | number | undefined>;

/** What was typed for one input of a sum: a number, a choice or a table. */
type SumGiven =
  | { typed: string; unit: string; sure?: boolean; value?: undefined; rows?: undefined }
  | { value: string; typed?: undefined; unit?: undefined; rows?: undefined }
  | {
      rows: SumCells[];
      unit: string;
      sure?: boolean;
      typed?: undefined;
      value?: undefined;
    };

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
  default: {
    value: any;
    status: string;
    source: string;
    low: number | null;
    high: number | null;
  } | null;
  optional: boolean;
  hidden: boolean;
}

/** What a sum gives. */
interface SumOutput {
  name: string;
  unit: string;
  units: string[];
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

interface SumValue {
  name: string;
  value: any;
  low: any;
  high: any;
  unit: string;
  of: string | null;
}

interface Tank {
  id: string;
  name: string;
  opened_ms: number;
  mass_kg: number;
  salt_kg: number;
  salt_frac: number;
  temp_c: number | null;
  measured: {
    id: string;
    at_ms: number;
    value: number;
    typed: string | null;
    typed_unit: string | null;
  } | null;
  drift_frac: number | null;
  water_salt_ratio: {
    value: number;
    low: number;
    high: number;
    from: string;
    status: string;
  };
  loads: TankLoad[];
  wanted_frac: number;
  salt_to_add_kg: number | null;
  water_to_add_kg: number | null;
  outside: Problem[];
  notes: ({ key: string } & Record<string, any>)[];
}

/** Wheels in a brine tank; `out_ms` null while they are in it. */
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
}

interface Target {
  quantity: string;
  value: number;
  low: number | null;
  high: number | null;
  unit: string;
  source: any;
  status: string;
  last: ReadingLast | null;
}

/** Who has a step in hand. */
interface Task extends Who {
  from: Said | null;
  stale: "idle" | "shift" | null;
  stale_ms: number;
  others: Task[];
}

interface TimeSpan {
  planned_end_ms: number;
  expected_end_ms: number;
  late_s: number;
}

interface Timer {
  id: string;
  label: string;
  step: string | null;
  start_ms: number;
  due_ms: number;
  by: string;
  stopped_ms: number | null;
}

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

/** A line of the table of units: kept = shown in `from`, times scale plus offset. */
interface UnitLine {
  from: string;
  to: string;
  scale: number;
  offset: number;
}

/** How many entries cannot be read here. */
interface Unread {
  newer: number;
  unsound: number;
}

/** A value that could not be saved, as it was entered. */
interface Unsaved {
  id: string;
  kind: string;
  make: string | null;
  data: Record<string, any>;
  ref: string | null;
  event: Entry;
  key: string;
  problems: Problem[];
}

/** What the readings of a heat treatment meet. */
interface Verdict {
  rule: string;
  unit: "C" | "F";
  class: string;
  meaning: string;
  reasons: ({ key: string } & Record<string, any>)[];
  warnings: ({ key: string } & Record<string, any>)[];
  hold: {
    row: string;
    min_temp: number;
    air_min_temp: number | null;
    start_ms: number;
    end_ms: number;
    held_s: number;
    needed_s: number;
  } | null;
  if_not_met: string | null;
  start_ms: number;
  gap: {
    gap_s: number;
    is_own: boolean;
    agreed_with: string | null;
    refused_s: number | null;
  };
}

interface View {
  make: Make;
  now_ms: number;
  next_change_ms: number | null;
  focus: string | null;
  left_open: string[];
  steps: Step[];
  timers: Timer[];
  alerts: Alert[];
  to_judge: ToJudge[];
  day: TimeSpan;
  whole: TimeSpan;
  log: LogLine[];
  unread: Unread;
}

/** A room's display as the server knows it. */
interface Wall {
  device: string;
  name: string;
  age_s: number;
  sound: boolean;
  lives: boolean;
}

/** Which entry, when, and whose. */
interface Who extends Said {
  id: string;
}

/** A text of a recipe by language: { en: "Curd" }. */
interface Words {
  [language: string]: string;
}

// What browsers have and TypeScript's list of them has not, and the page's own.

declare var pushManager: PushManager | undefined;
declare var trustedTypes:
  | {
      createPolicy(
        name: string,
        rules: { createScriptURL: (address: string) => string },
      ): { createScriptURL(address: string): string };
    }
  | undefined;
/** The first picture that first.js asked for; data/live.js takes it over, once. */
declare var vatsidePicture: Promise<Picture | null> | null | undefined;

interface Navigator {
  /** Of Safari alone: whether the page was opened from the home screen. */
  standalone?: boolean;
}
