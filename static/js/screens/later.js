// The screens that Now and Make do without, and what of a make is looked at apart:
// phones load them as one file of their own, see ./late.js.

export { AlarmsScreen } from "./alarms.js";
export { CurveScreen } from "./curve/curve-screen.js";
export { DeviceScreen } from "./device.js";
export { GuestScreen } from "./guest/guest.js";
export { BatchSheet } from "./make/batch-sheet.js";
export { EquipmentSheet } from "./make/equipment-sheet.js";
export { LabSheet } from "./make/lab-sheet.js";
export { StepSumPage, StepSums } from "./make/step-sums.js";
export { NeedsLookScreen } from "./needs-look.js";
export { NewMakeScreen } from "./new-make.js";
export { PeopleScreen } from "./people.js";
export { PinScreen } from "./pin.js";
export { RecipesScreen } from "./recipes.js";
export { RecordScreen } from "./record.js";
export { StoreScreen } from "./store/store.js";
export { SumScreen, SumsScreen } from "./sums/sums.js";
export { TrendsScreen } from "./trends.js";
export { WallScreen } from "./wall.js";
export { WordsScreen } from "./words.js";
