// What leads a hold while it runs, and what is known for its chart.

export const HOLD = {
  "hold.lead": "The hold now",
  "hold.of.milk_temp_c": "Milk",
  "hold.of.air_space_temp_c": "Air space",
  "hold.at_least": "at least {temp}",
  "hold.other_unit": "Read in another unit: it does not count here.",
  "hold.next": "Next round",
  "hold.counts_for": "It counts if read within {time}.",
  "hold.says.meets_so_far": "Meets so far, until {end}",
  "hold.says.whole": "Held to the end. The hold can be finished.",
  "hold.says.waiting":
    "Read both. The hold counts from the first round that is hot enough.",
  "hold.says.last_round": "Time is up. Read both once more to make the hold whole.",
  "hold.says.milk_cold":
    "Milk too cold: {value}, at least {limit}. The hold begins again; it ends at {end} at the earliest.",
  "hold.says.air_cold":
    "Air space too cold: {value}, at least {limit}. The hold begins again; it ends at {end} at the earliest.",
  "hold.says.lost":
    "Nothing was read for more than {span}. The hold begins again with the next round.",
  "hold.says.again_milk_cold":
    "Began again at {start}: the milk was {value} at {at}. New end {end}.",
  "hold.says.again_air_cold":
    "Began again at {start}: the air space was {value} at {at}. New end {end}.",
  "hold.says.again_gap":
    "Began again at {start}: nothing was read for {span} from {at}; {gap} counts. New end {end}. Where the chart is whole, a maker may decide otherwise.",
  "hold.says.fat_decides":
    "Enter the fat: from {fat} on at least {raised} is asked of the milk.",
  "hold.says.chart_lacks": "Not entered yet, and the chart asks for it: {fields}.",
  "hold.chart": "For the chart",
  "hold.not_known": "not entered",
  "hold.product": "{title}, batch {batch}",
  "hold.extent": "{from} to {until}",
  "hold.at": "{temp} at {at}",
  "chart.date": "date",
  "chart.plant_name": "name of the plant",
  "chart.product_name": "name of the product",
  "chart.product_amount": "amount",
  "chart.hold_extent": "extent of the hold",
  "chart.indicating_reading": "indicating thermometer",
  "chart.airspace_reading": "air space thermometer",
  "chart.operator_initials": "initials",
  "chart.recorder_number": "number of the recorder",
  "in.chart_recorder_number": "On the chart: number of the recorder",
  "blocker.hold_not_whole": "Both thermometers were not read at the end of the hold.",
};
