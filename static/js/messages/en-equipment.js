// English texts of what the creamery has. Labels of single rows are those of the
// sums ("in."), but where those say too little ("equip.").

export const EN_EQUIPMENT = {
  'kind.equipment_set': 'equipment',
  'line.equipment_set': 'Equipment: {what} {value}',
  'line.equipment_agreed': 'Equipment: {what} {value}, agreed with {name}',
  'field.key': 'The row',
  'field.agreed_with': 'Whom it was agreed with',
  'field.gap_agreed_with': 'Whom the gap was agreed with',
  'field.equipment': 'The equipment',
  'from.equipment': 'equipment',
};
