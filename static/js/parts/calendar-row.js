import { html } from "./html.js";
import { Row } from "./sheet.js";
import { net } from "./source.js";
import { openCalendar } from "../data/alarm.js";
import { t } from "../messages/index.js";

/**
 * Put this step's deadline, and the make's long ones, into the phone's calendar.
 *
 * @param {{make: string, step?: ?Step}} props
 */
export function CalendarRow({ make, step = null }) {
  const isOff = net.value !== "online"; // the server writes the file
  const detail = t(isOff ? "rung.calendar_offline" : "rung.calendar_detail");
  const hasDeadline = step?.status === "running" && step.due_ms !== null;
  return html`
    ${hasDeadline ? html`<${Row} title=${t("rung.calendar_step")} detail=${detail} disabled=${isOff} onTap=${() => openCalendar(make, step.key)} />` : null}
    <${Row} title=${t("rung.calendar_make")} detail=${detail} disabled=${isOff} onTap=${() => openCalendar(make)} />`;
}
