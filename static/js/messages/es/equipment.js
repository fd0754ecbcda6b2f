// Spanish texts of what the creamery has: the keys of en-equipment.js, in its order.

export const EQUIPMENT = {
  'kind.equipment_set': 'equipo',
  'line.equipment_set': 'Equipo: {what} {value}',
  'line.equipment_agreed': 'Equipo: {what} {value}, acordado con {name}',
  'field.key': 'La fila',
  'field.agreed_with': 'Con quién se acordó',
  'field.gap_agreed_with': 'Con quién se acordó el hueco',
  'field.equipment': 'El equipo',
  'from.equipment': 'equipo',
};
