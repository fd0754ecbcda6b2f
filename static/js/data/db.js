// What must survive on the phone: IndexedDB, and the ways in which it fails.
//
// queue       entries not yet acknowledged; never deleted, only moved
// sent        acknowledged entries, kept 14 days and until seen in a pull, so
//             that a server restored from a backup gets them again
// needs_look  entries that the server put aside, with its reasons
// log         entries as the server told them, with its receipt and the epoch it
//             told them in; a cache, unless the server was set back meanwhile
// meta        device, counter, cursor, epoch
// saved       what was painted last, recipes, people; a cache

// One door: who keeps or asks for something need not know the file of its topic.
export { beginEpoch, compared, lost, place, settleLost } from "./db/epoch.js";
export { everything, filed, prune, storePulled } from "./db/log.js";
export {
  enqueue,
  offerAgain,
  oldest,
  pending,
  putAside,
  sendAsideAgain,
  settle,
  unaccepted,
} from "./db/queue.js";
export {
  adoptDevice,
  deviceId,
  getFirst,
  getMeta,
  getSaved,
  probe,
  setMeta,
  setSaved,
} from "./db/saved.js";
export { StorageError } from "./db/work.js";
