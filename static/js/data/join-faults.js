// What goes wrong with joining, and at which field it is said.

const OWNER_SIGNS = 16;

/**
 * Whether a code makes an owner, who may not have a name here yet.
 *
 * @param {string} code
 */
export function isOwnersCode(code) {
  return code.replace(/[\s-]/g, "").length === OWNER_SIGNS;
}

// By the field that the server names; what it says of none is said at the code.
/** @type {Record<string, string>} */
const FIELDS = { code: "code", person_name: "name", device_name: "device" };
/** @type {Record<string, string>} */
const SAYS = {
  wrong_code: "error.wrong_code",
  too_many_tries: "error.too_many_tries",
  inactive_person: "error.inactive_person",
  device_in_use: "error.device_in_use",
  unreachable: "error.unreachable",
  no_answer: "error.unreachable",
};

/**
 * Return where and with which text a failed joining is said.
 *
 * @param {{key: string, field: string | null, limit: any}} failure an ApiError
 * @returns {{field: string, says: string, values: Record<string, any>}} field: code, name, device
 */
export function faultOf({ key, field, limit }) {
  if (key === "missing" && field === "person_name") {
    return { field: "name", says: "error.person_missing", values: {} };
  }
  const says = SAYS[key] ?? "error.other";
  return { field: FIELDS[field ?? ""] ?? "code", says, values: { seconds: limit } };
}
