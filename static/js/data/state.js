// What the screens show, as signals. Only modules in data/ write them.
//
// Nothing here is worked out in JavaScript: `view` and `board` are the core's
// answers as they came. All instants are corrected (server) milliseconds.

import { signal } from "@preact/signals";

/** @import { Signal } from "@preact/signals" */

/**
 * The paired phone, or null.
 *
 * @type {Signal<Me | null>}
 */
export const me = signal(null);
/**
 * Everyone of the creamery.
 *
 * @type {Signal<Person[]>}
 */
export const people = signal([]);
/**
 * Id of the person who taps now; entries carry it.
 *
 * @type {Signal<string | null>}
 */
export const person = signal(null);
/**
 * The roles that may do each thing, as the core told them.
 *
 * @type {Signal<Record<string, Role[]>>}
 */
export const rights = signal({});
/**
 * The core's board over all makes, or null before the first one.
 *
 * @type {Signal<Board | null>}
 */
export const board = signal(null);
/**
 * Id of the make that the Make screen shows, or null.
 *
 * @type {Signal<string | null>}
 */
export const openMakeId = signal(null);
/**
 * The core's view of the open make, or null.
 *
 * @type {Signal<View | null>}
 */
export const view = signal(null);
/** True while `view` and `board` are last time's and not yet confirmed. */
export const remembered = signal(true);
/**
 * Whole recipes held on this phone, so that a make can be opened offline.
 *
 * @type {Signal<Recipe[]>}
 */
export const recipes = signal([]);

/**
 * Number of entries that the server has not acknowledged; null until counted.
 *
 * @type {Signal<number | null>}
 */
export const unsent = signal(null);
/**
 * Instant of the oldest of them, or null.
 *
 * @type {Signal<number | null>}
 */
export const oldestUnsentMs = signal(null);
/**
 * Entries that could not be saved.
 *
 * @type {Signal<Unsaved[]>}
 */
export const unsaved = signal([]);
/** Number of entries that the server put aside for a person to judge. */
export const needsLook = signal(0);

/** "unknown|online|offline|server_gone|slowed|not_paired|removed". */
export const net = signal(navigator.onLine === false ? "offline" : "unknown");
/**
 * Last failure of an exchange: {key, text} or null.
 *
 * @type {Signal<{key: string, text: string} | null>}
 */
export const netProblem = signal(null);
/** "fine|nearly_full|full|read_only": whether the server can record. */
export const serverDisk = signal("fine");
/** True while an exchange with the server is under way. */
export const syncing = signal(false);
/**
 * Instant of the last answer from the server, or null.
 *
 * @type {Signal<number | null>}
 */
export const lastWordMs = signal(null);
/** How the live view gets its news: "off|live|polling|waiting". */
export const live = signal("off");

/** "starting|ready|failed": the core on this phone. */
export const core = signal("starting");
/**
 * Text of the core's failure, or null.
 *
 * @type {Signal<string | null>}
 */
export const coreProblem = signal(null);
/**
 * {off_ms, jumped_ms}: the phone's clock is wrong or was moved; else null.
 *
 * @type {Signal<{off_ms: number | null, jumped_ms: number} | null>}
 */
export const clockWarning = signal(null);

/** A new version of the app waits for a tap. */
export const updateReady = signal(false);
/** "starting|ready|unavailable": whether the app opens without a network. */
export const offlineReady = signal("starting");
/**
 * How this phone keeps its data: problem is a message key or null.
 *
 * @type {Signal<{persisted?: boolean | null, usage?: number | null,
 *     quota?: number | null, problem: string | null}>}
 */
export const storage = signal({
  persisted: null,
  usage: null,
  quota: null,
  problem: null,
});
