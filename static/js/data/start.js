// The order in which the phone comes to life: last time's painting, then the
// core, then the network. No step waits for a later one.

import { ApiError } from "./api.js";
import { clock } from "./clock.js";
import { deviceId, getFirst, getSaved, probe, prune } from "./db.js";
import { asKept, refresh, showMake } from "./desk.js";
import { readMe } from "./actions.js";
import { start as startCore, takeRest } from "../core/bridge.js";
import { restoreReads, retryLanguage, sendReads } from "./reads.js";
import { freshenPins } from "./pins.js";
import { learnRights } from "./rights.js";
import { freshenRecipes } from "./recipes.js";
import { afterRecord, countUnsent, restoreUnsaved } from "./record.js";
import {
  board,
  clockWarning,
  me,
  net,
  openMakeId,
  people,
  person,
  recipes,
  rights,
  storage,
  view,
} from "./state.js";
import { showNobody } from "./sign-out.js";
import { fromOtherTab, kick, setAppVersion } from "./sync.js";
import { listen } from "./tabs.js";
import { keepLater, keepOffline } from "./update.js";
import { uuid4 } from "./uuid.js";

const CLOCK_LOOK_MS = 5000;
const FRESHEN_MS = 60000;

/** Bring back what was shown last; the only thing the first painting waits for. */
export async function remember() {
  restoreUnsaved();
  const keys = ["me", "people", "person", "board", "reads", "rights"];
  /** @type {Awaited<ReturnType<typeof getFirst>>} */
  const first = await getFirst(keys).catch(() => ({ saved: [] }));
  // Before anything can be tapped: an entry's time depends on it.
  clock.restore(first.clock ?? null);
  const [mine, all, who, lastBoard, changes, known] = first.saved;
  me.value = mine ?? null;
  people.value = all ?? [];
  person.value = who ?? mine?.person.id ?? null;
  board.value = lastBoard ?? null;
  rights.value = known ?? {};
  if (first.open) {
    openMakeId.value = first.open;
    view.value = first.view ? asKept(first.view) : null;
  }
  await restoreReads(changes);
}

// Whole recipes are large and no first painting shows one.
async function rememberRecipes() {
  const [whole] = await getSaved(["recipes"]).catch(() => []);
  if (whole && !recipes.value.length) recipes.value = whole;
}

function lookAtClock() {
  const hidden = document.visibilityState === "hidden";
  if (clock.observe(hidden) && !hidden) kick("online");
  clockWarning.value = clock.warning();
}

async function measureStorage() {
  const kept = navigator.storage;
  if (!kept) return;
  // Some browsers ask the person and stay silent meanwhile: never wait for it.
  kept.persist?.().then(
    (persisted) => {
      storage.value = { ...storage.value, persisted };
    },
    () => {},
  );
  const { usage, quota } = (await kept.estimate?.()) ?? {};
  storage.value = { ...storage.value, usage, quota };
}

async function askServer() {
  try {
    await readMe();
    retryLanguage();
    await sendReads();
    await freshenPins();
    await freshenRecipes();
  } catch (failure) {
    // The exchange itself tells how the network is; this only fills in names.
    if (failure instanceof ApiError && failure.status === 401) {
      net.value = "not_paired";
    }
  }
}

function wake() {
  lookAtClock();
  probe();
  refresh();
  kick("visible");
}

function listenAround() {
  addEventListener("online", () => kick("online"));
  addEventListener("offline", () => {
    net.value = "offline";
  });
  addEventListener("pageshow", (event) => event.persisted && wake());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") wake();
    else lookAtClock();
  });
  listen((told) => {
    if (told.events) fromOtherTab(told.events).catch(() => {});
    if (told.person) person.value = told.person;
    if (told.signedOut) showNobody();
  });
  setInterval(lookAtClock, CLOCK_LOOK_MS);
  setInterval(() => {
    if (document.visibilityState === "visible" && net.value === "online") askServer();
  }, FRESHEN_MS);
}

/**
 * Start the core, the exchange and the upkeep; call after the first painting.
 *
 * @param {() => unknown} inQuietTime called when there is time for what no one needs yet
 */
export async function begin(inQuietTime) {
  afterRecord(kick);
  listenAround();
  startCore().then(setAppVersion, () => {});
  learnRights().catch(() => {}); // until then as it told them last
  keepOffline();
  measureStorage().catch(() => {});
  await deviceId(uuid4).catch(() => {}); // "storage.problem" tells of it
  await countUnsent().catch(() => {});
  await rememberRecipes();
  askServer().then(() => kick("start"));
  if (openMakeId.value) {
    takeRest(); // a make's first View asks sums, which come with the rest
    showMake(openMakeId.value).catch(() => {});
  }
  await refresh();
  await prune(clock.nowMs(), board.value?.makes ?? []).catch(() => {});
  keepLater(() => {
    takeRest();
    inQuietTime();
  });
}
