// Where the screens get facts from and send acts to: one door, so that a screen
// never knows how the phone keeps or sends them.
export {
  me,
  people,
  person,
  board,
  view,
  recipes,
  unsent,
  oldestUnsentMs,
  unsaved,
  net,
  netProblem,
  serverDisk,
  lastWordMs,
  live,
  core,
  coreProblem,
  updateReady,
  offlineReady,
  clockWarning,
  needsLook,
  storage,
} from "../data/state.js";
export { changeReads, hasLanguage, reads, waiting } from "../data/reads.js";
export { roleMay } from "../data/rights.js";
export { isBehind, picture } from "../data/live.js";
export { hand, record } from "../data/record.js";
export {
  applyUpdate,
  canKeepAwake,
  dropUnsaved,
  exportQueue,
  freshenRecipes,
  keepAwake,
  openMake,
  pair,
  putAside,
  refresh,
  retryUnsaved,
  sendAgain,
  setPerson,
  watch,
} from "../data/actions.js";
export { signOut } from "../data/sign-out.js";
export { freshenPins, pins, restorePins, setTries, triesOf } from "../data/pins.js";
export { nowMs, waitedMs } from "../data/clock.js";
export { get, post, remove } from "../data/api.js";
export { uuid7 } from "../data/uuid.js";
export * as ask from "../data/ask.js";
