// Who may do what, as the core told it: shown by it alone, offline too.

import assert from "node:assert/strict";
import { test } from "node:test";

import { phone } from "../page.mjs";

const RIGHTS = { note_added: ["helper", "owner"], people: ["owner"] };
const OWNER = { id: "person-1", name: "Owner", role: "owner" };
const HELPER = { id: "person-2", name: "Helper", role: "helper" };

async function opened(world) {
  world.core = (name) => (name === "rights" ? RIGHTS : null);
  const page = await world.open(["data/rights", "data/start", "parts/people-names"]);
  page.state.me.value = { device: "device-1", person: OWNER };
  page.state.people.value = [OWNER, HELPER];
  return { ...page, rights: page["data/rights"], names: page["parts/people-names"] };
}

test("until the core has told, nobody is shown what they may do", async () => {
  const page = await opened(phone());
  assert.equal(page.names.may("note_added"), false);
  await page.rights.learnRights();
  assert.equal(page.names.may("note_added"), true);
});

test("on a shared phone both its person and who taps must be allowed", async () => {
  const page = await opened(phone());
  await page.rights.learnRights();
  assert.equal(page.names.may("people"), true);
  page.state.person.value = HELPER.id;
  assert.equal(page.names.may("people"), false);
  assert.equal(page.names.may("note_added"), true);
  page.state.me.value = { device: "device-1", person: { ...OWNER, role: "viewer" } };
  assert.equal(page.names.may("note_added"), false);
});

test("what the core told is there again at the next opening, before it answers", async () => {
  const world = phone();
  await (await opened(world)).rights.learnRights();
  world.core = () => new Promise(() => {});
  const later = await world.open(["data/start"]);
  await later["data/start"].remember();
  assert.deepEqual(later.state.rights.value, RIGHTS);
});

test("a kind that this core does not know is allowed to nobody", async () => {
  const page = await opened(phone());
  await page.rights.learnRights();
  assert.equal(page.rights.roleMay("owner", "milk_blessed"), false);
  assert.equal(page.rights.roleMay(undefined, "note_added"), false);
});
