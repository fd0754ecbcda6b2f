// What the page alone has, and what the server tells it, as its JSDoc names them; what
// the core answers is in shapes.d.ts. In the order of the names.

/** What rings and will, as the server adds who hears it. */
interface Alarms {
  makes?: Pick<
    MakeSummary,
    "id" | "name" | "batch" | "vat" | "state" | "matters" | "band"
  >[];
  walls?: Wall[];
  escalate_min?: number;
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

/** Whose hand an entry made now would be of. */
type Hand = Pick<Entry, "device" | "person" | "boot" | "entered_ms">;

/** A wrapped key as the server hands it out. */
interface KnownPin extends Sealed {
  device: string | null;
  set_ms: number;
}

/** Who this phone is paired to. */
interface Me {
  person: Person;
  device: string;
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

/** As the page finds one itself, or one of a sum's. */
interface Problem {
  value?: any;
  text?: string | null;
}

/** An entry as the server tells it, with what it found of its proof. */
interface PulledRow {
  n: number;
  recv_ms: number;
  event: Recorded;
  receipt?: any;
  proof_state?: string | null;
}

/** How a person reads figures and texts, each set. */
interface Reads {
  language: string;
  temp_unit: string;
  volume_unit: string;
  mass_unit: string;
  pressure_unit: string;
}

/** An entry that is on disk and counted. */
interface Recorded extends Entry {
  seq: number;
}

/** What a recipe may hold beside is its author's, and its figures are read by path. */
interface Recipe {
  [more: string]: any;
}

type Role = "owner" | "maker" | "helper" | "viewer";

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

/** A row of a table that was typed: a cell left out is undefined. */
type SumCells = Record<string, string | number | undefined>;

/**
 * What was typed for one input of a sum: a number, a choice or a table; `sure` once the
 * maker stands by an unlikely one.
 */
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

/** A room's display as the server knows it. */
interface Wall {
  device: string;
  name: string;
  age_s: number;
  sound: boolean;
  lives: boolean;
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
  /** Of Safari alone: what "playback" lets sound past the mute switch. */
  audioSession?: { type: string };
}

/** What old Safari calls AudioContext. */
declare var webkitAudioContext: typeof AudioContext | undefined;
