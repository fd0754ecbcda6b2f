// Server-sent events, read from a plain response body.
//
// The browser's own EventSource hides two things that a watcher must know: the
// comments that prove the line is alive, and a refusal with Retry-After.

/**
 * Split a growing text into finished messages.
 *
 * @returns {(piece: string) => {event: string, id: string|null, data: string}[]}
 */
export function reader() {
  let rest = "";
  return (piece) => {
    rest += piece.replaceAll("\r\n", "\n");
    const blocks = rest.split("\n\n");
    rest = blocks.pop() ?? "";
    return blocks.map(message).filter((event) => event.data !== "");
  };
}

/** @param {string} block */
function message(block) {
  /** @type {{event: string, id: string | null, data: string[]}} */
  const parsed = { event: "message", id: null, data: [] };
  for (const line of block.split("\n")) {
    const colon = line.indexOf(":");
    if (colon <= 0) continue; // a comment, or a field without a value
    const name = line.slice(0, colon);
    const value = line.slice(colon + 1).replace(/^ /, "");
    if (name === "data") parsed.data.push(value);
    else if (name === "event" || name === "id") parsed[name] = value;
  }
  return { ...parsed, data: parsed.data.join("\n") };
}
