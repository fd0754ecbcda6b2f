// The recipe's own texts in Spanish, by their English text, in the recipe's order.

export const RECIPE = {
  "Washed-curd wheel": "Pieza de cuajada lavada",
  "A Gouda-type washed-curd wheel in two sizes, from cold milk to the store. Each figure names its source. Your site procedure, your licensing authority and the chart of your pasteuriser come before anything written here.":
    "Una pieza tipo Gouda de cuajada lavada en dos tamaños, de la leche fría a la cava. Cada cifra dice su fuente. El procedimiento de su quesería, su autoridad sanitaria y el gráfico de su pasteurizador van antes que todo lo escrito aquí.",
  "Small wheel": "Pieza pequeña",
  "Large wheel": "Pieza grande",
  "Starter, direct, deep-frozen": "Fermento directo, ultracongelado",
  "Bulk starter, if used in place of packs":
    "Cultivo madre, si se usa en vez de sobres",
  "Calcium chloride": "Cloruro de calcio",
  "Lay more weight on, spread evenly.": "Ponga más peso, bien repartido.",
  "Take weight off, so that the whey still runs out of the bed.":
    "Quite peso, para que el suero siga saliendo de la cuajada.",
  "Raise the pressure slowly to the figure, and look whether whey runs clear.":
    "Suba la presión despacio hasta la cifra y mire si el suero sale claro.",
  "Let the pressure down to the figure: a skin that closes early keeps whey in.":
    "Baje la presión hasta la cifra: una corteza que se cierra pronto retiene suero.",
  "Annatto colour": "Colorante achiote",
  "Rennet, single strength": "Cuajo, fuerza simple",

  "Receive the milk": "Recibir la leche",
  "Check the drug test first. Do not use the milk without a negative result.":
    "Mire primero la prueba de antibióticos. No use la leche sin un resultado negativo.",
  "Measure the temperature and ask how old the oldest milk is.":
    "Mida la temperatura y pregunte la edad de la leche más vieja.",
  "Run the milk into the tank and measure how much there is.":
    "Pase la leche al tanque y mida cuánta hay.",
  "Write it down and cool the milk at once. Follow your site procedure before you use it.":
    "Anótelo y enfríe la leche ya. Siga el procedimiento de su quesería antes de usarla.",
  "Check the meter or dipstick. The doses follow the milk you measured; fill fewer moulds.":
    "Revise el contador o la varilla. Las dosis siguen a la leche medida; llene menos moldes.",
  "Check the meter or dipstick and the room left in the vat. The doses follow the milk you measured.":
    "Revise el contador o la varilla y el sitio que queda en la cuba. Las dosis siguen a la leche medida.",
  "Do not start without the result of the drug test. If it is positive, keep the milk apart and follow your licensing authority.":
    "No empiece sin el resultado de la prueba de antibióticos. Si es positivo, aparte la leche y siga lo que diga su autoridad sanitaria.",

  "Pump the milk to the vat": "Pasar la leche a la cuba",
  "Check that the vat is clean, rinsed and its outlet shut.":
    "Mire que la cuba esté limpia, enjuagada y con la salida cerrada.",
  "Join the hose and pump the milk over.": "Conecte la manguera y bombee la leche.",
  "Start the stirrer when the milk covers it.":
    "Ponga en marcha el agitador cuando lo cubra la leche.",
  "Cold milk must stay cold: cool the jacket and write down why.":
    "La leche fría debe seguir fría: enfríe la camisa y anote por qué.",

  "Rest the milk cold": "Guardar la leche en frío",
  "Keep the milk cold overnight, with the lid shut.":
    "Mantenga la leche fría toda la noche, con la tapa cerrada.",
  "Stir it gently now and then.": "Agítela con suavidad de vez en cuando.",
  "Read the temperature at night and again before you heat.":
    "Mida la temperatura por la noche y otra vez antes de calentar.",
  "Cool the milk at once and write down since when it was warm. Follow your site procedure before you use it.":
    "Enfríe la leche ya y anote desde cuándo estaba templada. Siga el procedimiento de su quesería antes de usarla.",
  "Start to heat, or ask the person in charge: old milk makes poor cheese.":
    "Empiece a calentar, o pregunte a la persona a cargo: la leche vieja da mal queso.",

  "Heat the milk": "Calentar la leche",
  "Shut the lid, set the chart and start the stirrer.":
    "Cierre la tapa, ponga el papel del registrador y arranque el agitador.",
  "Run hot water round the jacket and heat the air under the lid.":
    "Haga pasar agua caliente por la camisa y caliente el aire bajo la tapa.",
  "Read the milk and the air space as they rise.":
    "Mida la leche y el espacio de aire mientras suben.",
  "Check the hot water, the jacket and the stirrer. Write down why it is slow.":
    "Revise el agua caliente, la camisa y el agitador. Anote por qué va lento.",
  "Turn the heat down. Too much heat makes a weak curd: write it down.":
    "Baje el calor. Demasiado calor da una cuajada débil: anótelo.",
  "Heat the air space too: it must be hotter than the milk has to be before the hold can start.":
    "Caliente también el espacio de aire: debe estar más caliente que lo pedido para la leche antes de que empiece la retención.",

  "Hold the milk hot": "Mantener caliente la leche",
  "Keep the lid shut and the stirrer on for the whole hold.":
    "Tenga la tapa cerrada y el agitador en marcha toda la retención.",
  "Read milk and air space together, each time the countdown asks.":
    "Lea juntos la leche y el espacio de aire cada vez que lo pida la cuenta atrás.",
  "Read the milk and the air space every 5 minutes.":
    "Mida la leche y el espacio de aire cada 5 minutos.",
  "Add nothing. The chart of the pasteuriser is the record that counts.":
    "No añada nada. El gráfico del pasteurizador es el registro que cuenta.",
  "Heat at once. Milk or air space was too cold: the hold starts again from the beginning once both are hot enough. Write it down and follow your site procedure and licensing authority.":
    "Caliente ya. La leche o el espacio de aire estaban demasiado fríos: la retención empieza otra vez desde el principio cuando los dos estén bastante calientes. Anótelo y siga el procedimiento de su quesería y lo que diga su autoridad sanitaria.",
  "Turn the heat down and write it down.": "Baje el calor y anótelo.",
  "Do not end the hold: it must last the whole time without a break.":
    "No termine la retención: debe durar todo el tiempo sin corte.",
  "A reading that was missed cannot be made up. Write it down and ask the person in charge before any milk leaves the vat.":
    "Una lectura que faltó no se puede recuperar. Anótelo y pregunte a la persona a cargo antes de que salga leche de la cuba.",

  "Mark the chart": "Marcar el gráfico",
  "Before any milk leaves the vat, mark the end of the hold on the chart.":
    "Antes de que salga leche de la cuba, marque en el gráfico el fin de la retención.",
  "Write both thermometers, the air space, the milk and your initials on the chart.":
    "Escriba en el gráfico los dos termómetros, el espacio de aire, la leche y sus iniciales.",
  "The recorder must not read higher than the indicator.":
    "El registrador no debe marcar más que el indicador.",
  "If the recorder reads above the indicator, stop. Write it down and ask your licensing authority how to go on.":
    "Si el registrador marca más que el indicador, pare. Anótelo y pregunte a su autoridad sanitaria cómo seguir.",
  "Do not let milk leave the vat. Write it down and follow your site procedure and licensing authority.":
    "No deje salir leche de la cuba. Anótelo y siga el procedimiento de su quesería y lo que diga su autoridad sanitaria.",
  "Do not let milk leave the vat until the chart is marked.":
    "No deje salir leche de la cuba hasta marcar el gráfico.",

  "Drain the hot jacket": "Vaciar la camisa caliente",
  "Turn the room fans on to carry the steam away.":
    "Encienda los ventiladores de la sala para sacar el vapor.",
  "Drain the hot water from the jacket.": "Vacíe el agua caliente de la camisa.",
  "Turn the fans off when the jacket is empty. Leave them off during the make.":
    "Apague los ventiladores cuando la camisa esté vacía. Déjelos apagados durante la elaboración.",
  "Check the drain valve. Hot milk goes on cooking: cool it as soon as you can.":
    "Revise la válvula de vaciado. La leche caliente se sigue cociendo: enfríela en cuanto pueda.",

  "Cool to set": "Enfriar para cuajar",
  "Run cold water round the jacket and keep the stirrer on.":
    "Haga pasar agua fría por la camisa y deje el agitador en marcha.",
  "Read the milk every 10 minutes.": "Mida la leche cada 10 minutos.",
  "Stop the cold water a little before the figure: the milk goes on falling.":
    "Corte el agua fría un poco antes de la cifra: la leche sigue enfriándose.",
  "Check the cold water and the stirrer. Write down why it is slow.":
    "Revise el agua fría y el agitador. Anote por qué va lento.",
  "Stop the cold water. Warm the milk gently to the figure before you add the starter.":
    "Corte el agua fría. Caliente la leche con suavidad hasta la cifra antes de añadir el fermento.",

  "Fit knives and stirrers": "Montar liras y agitadores",
  "Switch the drive off and lock it out.": "Apague el motor y bloquéelo con candado.",
  "When the lids are cool enough to touch, take them off.":
    "Cuando las tapas se puedan tocar sin quemarse, quítelas.",
  "Fit the clean knives and stirrers.": "Monte las liras y los agitadores limpios.",
  "See that all hands and tools are out, then take off your lock.":
    "Mire que no quede dentro ninguna mano ni herramienta y quite su candado.",
  "Ask for a second pair of hands: the starter waits for this.":
    "Pida otro par de manos: el fermento espera a esto.",

  "Add the starter": "Añadir el fermento",
  "Keep the starter deep-frozen until this moment. Check its lot and date.":
    "Deje el fermento ultracongelado hasta este momento. Mire su lote y su fecha.",
  "Measure the pH and the temperature of the milk.":
    "Mida el pH y la temperatura de la leche.",
  "Scatter the starter over the milk with the stirrer slow.":
    "Esparza el fermento sobre la leche con el agitador lento.",
  "The milk is sour already. Write it down and ask the person in charge before you go on.":
    "La leche ya está ácida. Anótelo y pregunte a la persona a cargo antes de seguir.",
  "Check the pH meter against a standard, and the milk for water or cleaner left in the vat.":
    "Compruebe el pH-metro con un patrón, y que no quede agua ni producto de limpieza en la cuba.",
  "Warm the milk gently first: cold milk makes a slow starter.":
    "Caliente antes la leche con suavidad: con leche fría el fermento va lento.",
  "Cool the milk first: too warm harms the starter.":
    "Enfríe antes la leche: demasiado calor daña el fermento.",
  "Add the rest now and write it down. A short dose makes a slow vat.":
    "Añada ahora lo que falta y anótelo. Una dosis corta da una cuba lenta.",
  "Write it down. Expect the acid early and read the pH more often.":
    "Anótelo. La acidez llegará pronto: mida el pH más a menudo.",

  "Ripen the milk": "Madurar la leche",
  "Stir slowly while the starter wakes.":
    "Agite despacio mientras el fermento despierta.",
  "Stir in calcium chloride, well diluted, and colour if you use it.":
    "Mezcle el cloruro de calcio, bien diluido, y el colorante si lo usa.",
  "Measure the pH before the rennet.": "Mida el pH antes del cuajo.",
  "Give it up to 60 minutes and read again. Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release.":
    "Dele hasta 60 minutos y mida otra vez. Anótelo y separe esta elaboración como lote aparte. Revise el lote del fermento, la prueba de antibióticos y la temperatura. Siga el procedimiento de su quesería y pregunte a su autoridad sanitaria antes de darle salida.",
  "Add the rennet now. Write it down. Check the pH meter and the thermometer. Go on to the next step sooner.":
    "Añada el cuajo ahora. Anótelo. Revise el pH-metro y el termómetro. Pase antes al paso siguiente.",
  "Warm the jacket gently and stir.": "Caliente la camisa con suavidad y agite.",
  "Cool the jacket gently and stir.": "Enfríe la camisa con suavidad y agite.",
  "Add the rest before the rennet and write it down.":
    "Añada lo que falta antes del cuajo y anótelo.",
  "Write it down and ask the person in charge: calcium chloride has a legal limit.":
    "Anótelo y pregunte a la persona a cargo: el cloruro de calcio tiene un límite legal.",
  "Write down why. Go on as soon as you can and watch the pH.":
    "Anote por qué. Siga en cuanto pueda y vigile el pH.",

  "Add the rennet": "Añadir el cuajo",
  "Mix the rennet into 10 times as much cool water without chlorine, just before use.":
    "Mezcle el cuajo con 10 veces su volumen de agua fresca sin cloro, justo antes de usarlo.",
  "Begin this step as you pour: the clock for the cut starts here.":
    "Empiece este paso al verter: desde aquí se cuenta el tiempo hasta el corte.",
  "Spread it over the whole vat and stir for about 2 minutes.":
    "Repártalo por toda la cuba y agite unos 2 minutos.",
  "Stop the stirrer, lift it clear and let the milk stand still.":
    "Pare el agitador, súbalo y deje quieta la leche.",
  "Stop stirring now: stirring breaks the young curd.":
    "Deje de agitar ya: agitar rompe la cuajada joven.",
  "Write it down and do not add more once the milk stands still. Expect a later cut.":
    "Anótelo y no añada más cuando la leche esté quieta. El corte llegará más tarde.",
  "Write it down. Expect an earlier cut and test sooner.":
    "Anótelo. El corte llegará antes: pruebe más pronto.",
  "Write it down. Cold milk sets slowly: the test for flocculation still tells you when to cut.":
    "Anótelo. La leche fría cuaja despacio: la prueba de floculación le sigue diciendo cuándo cortar.",
  "Write it down. Warm milk sets fast: test sooner.":
    "Anótelo. La leche templada cuaja deprisa: pruebe más pronto.",

  "Let the milk set": "Dejar cuajar la leche",
  "Keep the vat still, out of draughts.":
    "Deje la cuba quieta y sin corrientes de aire.",
  "From about 8 minutes test for the first flakes, and record when you see them.":
    "Desde unos 8 minutos busque los primeros copos, y anote cuándo los ve.",
  "A few minutes before the cut is due, test how the curd breaks.":
    "Unos minutos antes del corte, pruebe cómo se abre la cuajada.",
  "Wait for a clean break; do not cut a soft curd. Write down rennet lot, temperature and pH, and check the dose for next time.":
    "Espere a un corte limpio; no corte una cuajada blanda. Anote lote del cuajo, temperatura y pH, y revise la dosis para la próxima vez.",
  "Test the break now and cut as soon as it is clean.":
    "Pruebe ya cómo se abre y corte en cuanto salga limpio.",
  "Do not stir. Warm the jacket very gently, or wait longer.":
    "No agite. Caliente la camisa muy suavemente, o espere más.",

  "Cut the curd": "Cortar la cuajada",
  "Measure the pH of the whey at the first cut.":
    "Mida el pH del suero en el primer corte.",
  "Start slow, then cut faster step by step.":
    "Empiece despacio y corte cada vez más rápido.",
  "Stop and lock the drive to scrape the walls. Stir, then cut again.":
    "Pare y bloquee el motor para raspar las paredes. Agite y corte otra vez.",
  "Go on until the pieces are even.": "Siga hasta que el grano sea parejo.",
  "Do not chase the last lumps: stop cutting, write it down and heal.":
    "No persiga los últimos trozos: pare el corte, anótelo y deje reposar.",
  "Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release.":
    "Anótelo y separe esta elaboración como lote aparte. Revise el lote del fermento, la prueba de antibióticos y la temperatura. Siga el procedimiento de su quesería y pregunte a su autoridad sanitaria antes de darle salida.",
  "Write it down. Check the pH meter and the thermometer. Go on to the next step sooner. Shorten the stirring.":
    "Anótelo. Revise el pH-metro y el termómetro. Pase antes al paso siguiente. Acorte la agitación.",

  "Heat the wash water": "Calentar el agua de lavado",
  "Use only water that your plan allows for washing curd.":
    "Use solo agua que su plan permita para lavar la cuajada.",
  "Heat enough for both washes, a quarter of the milk's volume.":
    "Caliente bastante para los dos lavados, un cuarto del volumen de la leche.",
  "Read its temperature until it reaches the figure.":
    "Mida su temperatura hasta que llegue a la cifra.",
  "The wash waits for this water. Keep the curd moving and watch its pH.":
    "El lavado espera a esta agua. Tenga el grano en movimiento y vigile su pH.",
  "Mix in cold water before you use it.": "Mézclela con agua fría antes de usarla.",

  "Heal the curd": "Reposar el grano",
  "Let the curd rest without stirring.": "Deje reposar el grano sin agitar.",
  "Wait until the cut faces shine and hold together.":
    "Espere a que las caras cortadas brillen y estén firmes.",
  "Start the next step before the curd mats at the bottom.":
    "Empiece el paso siguiente antes de que el grano se apelmace en el fondo.",

  "Draw off the first whey": "Sacar el primer suero",
  "Stop the stirrer and let the curd sink. Put strainer and net in place to catch stray curd.":
    "Pare el agitador y deje que la cuajada se asiente. Ponga el colador y la red para retener la cuajada suelta.",
  "Measure the pH of the whey, or its acidity.": "Mida el pH del suero, o su acidez.",
  "Draw off about a third of the whey and measure how much.":
    "Saque cerca de un tercio del suero y mida cuánto.",
  "Draw off more before the wash, or the water will not warm the curd to the figure.":
    "Saque más antes del lavado, o el agua no calentará el grano hasta la cifra.",
  "Read the pH again by the time shown, with the meter checked, and keep the curd at its temperature. Do not wash while it stands. If it still stands, ask the person in charge: hold the make as a separate lot or end it. Add no acid and no second starter to make up for it.":
    "Mida otra vez el pH antes de la hora indicada, con el pH-metro comprobado, y mantenga la cuajada a su temperatura. No lave mientras esté parado. Si sigue parado, pregunte al responsable: separar la elaboración como lote aparte o terminarla. No añada ácido ni un segundo fermento para compensar.",
  "Write it down. Less water is needed to reach the figure: add it slowly.":
    "Anótelo. Hace falta menos agua para llegar a la cifra: añádala despacio.",
  "Write it down. Check the pH meter and the thermometer. Go on to the next step sooner.":
    "Anótelo. Revise el pH-metro y el termómetro. Pase antes al paso siguiente.",

  "Stir the curd": "Agitar el grano",
  "Stir so that the pieces move freely and do not break.":
    "Agite de modo que el grano se mueva suelto y no se rompa.",
  "Read the temperature of the curd at the end.":
    "Mida la temperatura del grano al final.",
  "Stir on: soft curd breaks in the wash.":
    "Siga agitando: el grano blando se rompe en el lavado.",

  "Wash: first water": "Primer lavado",
  "Read the water, then run it in slowly with the stirrer on.":
    "Mida el agua y échela despacio con el agitador en marcha.",
  "Add most of it, read the curd, then add the rest.":
    "Añada casi toda, mida el grano y añada el resto.",
  "Stop when the curd reaches the figure. Measure the water used.":
    "Pare cuando el grano llegue a la cifra. Mida el agua usada.",
  "Add a little more hot water, slowly, and read again.":
    "Añada un poco más de agua caliente, despacio, y mida otra vez.",
  "Stop the water and stir. Too fast makes a skin that holds the whey in.":
    "Pare el agua y agite. Demasiado rápido hace una piel que retiene el suero.",
  "Slow the water down: 1 degree in 3 minutes or slower.":
    "Eche el agua más despacio: 1 grado en 3 minutos o más lento.",
  "Less water leaves more milk sugar: watch the pH.":
    "Menos agua deja más azúcar de leche: vigile el pH.",
  "More water leaves less milk sugar: the end pH may stay high.":
    "Más agua deja menos azúcar de leche: el pH final puede quedar alto.",

  "Let the curd settle": "Dejar bajar el grano",
  "Stop the stirrer and lift it clear.": "Pare el agitador y súbalo.",
  "Let the curd sink.": "Deje que el grano se hunda.",
  "Draw off the whey now, before the curd mats.":
    "Saque el suero ya, antes de que el grano se apelmace.",

  "Draw off the second whey": "Sacar el segundo suero",
  "Keep strainer and net in place.": "Deje puestos colador y red.",
  "Draw off until you see the curd in the whey, and measure how much.":
    "Saque hasta ver el grano en el suero, y mida cuánto.",
  "Draw off more, or the second water will not warm the curd enough.":
    "Saque más, o la segunda agua no calentará bastante el grano.",
  "Stop before the curd lies dry. Write it down.":
    "Pare antes de que el grano quede seco. Anótelo.",

  "Wash: second water": "Segundo lavado",
  "Mix cold water into the hot until it reads the figure.":
    "Mezcle agua fría con la caliente hasta que marque la cifra.",
  "Run it in slowly with the stirrer on, and read the curd often.":
    "Échela despacio con el agitador en marcha, y mida el grano a menudo.",
  "Stop the water and stir. Cool the jacket a little and write it down.":
    "Pare el agua y agite. Enfríe un poco la camisa y anótelo.",

  "Stir warm": "Agitar en caliente",
  "Stir until the pieces are springy and do not stick.":
    "Agite hasta que el grano sea elástico y no se pegue.",
  "Press a handful: it should hold, then break apart.":
    "Apriete un puñado: debe unirse y luego soltarse.",
  "Warm the jacket gently.": "Caliente la camisa con suavidad.",
  "Cool the jacket gently.": "Enfríe la camisa con suavidad.",

  "Move the curd to the table": "Pasar la cuajada a la mesa",
  "Check that the drain table and its cloths are clean and warm.":
    "Mire que la mesa de desuerado y sus paños estén limpios y templados.",
  "Pump or scoop curd and whey over, without breaking the curd.":
    "Pase cuajada y suero con bomba o cazo, sin romper el grano.",
  "Level the bed while whey still covers it.":
    "Iguale la cuajada mientras aún la cubre el suero.",
  "Cold curd does not knit: cover the bed and go on.":
    "La cuajada fría no se suelda: tápela y siga.",

  "Press the bed": "Preprensar la cuajada",
  "Lay plates on the bed, under the whey.":
    "Ponga placas sobre la cuajada, bajo el suero.",
  "Set the weights evenly and write down the load.":
    "Ponga los pesos repartidos y anote la carga.",

  "Change the weights round": "Cambiar los pesos de lado",
  "Move the weights to the other end, one at a time.":
    "Pase los pesos al otro extremo, de uno en uno.",
  "See that the bed is the same height all over.":
    "Mire que la cuajada tenga la misma altura en todas partes.",
  "Put the weights back on: the bed cools.":
    "Vuelva a poner los pesos: la cuajada se enfría.",

  "Press the bed again": "Preprensar otra vez",
  "Leave the weights on.": "Deje los pesos puestos.",
  "Let the whey run off at the end.": "Deje salir el suero al final.",
  "Leave the weights on for the whole time.": "Deje los pesos puestos todo el tiempo.",

  "Take the weights off": "Quitar los pesos",
  "Lift the weights off, one at a time.": "Levante los pesos, de uno en uno.",
  "Look at a cut edge: has the bed knitted into one piece?":
    "Mire un borde cortado: ¿se ha soldado la cuajada en un bloque?",
  "Put the weights back for 5 minutes and look again. Write it down.":
    "Vuelva a poner los pesos 5 minutos y mire otra vez. Anótelo.",

  "Cut the blocks": "Cortar los bloques",
  "Measure the bed and mark small and large blocks.":
    "Mida la cuajada y marque bloques pequeños y grandes.",
  "Cut straight down and keep your free hand behind the blade.":
    "Corte recto hacia abajo y tenga la otra mano detrás de la hoja.",
  "Weigh a block of each size before you cut the rest.":
    "Pese un bloque de cada tamaño antes de cortar los demás.",
  "Cover the blocks: cold curd does not close.":
    "Tape los bloques: la cuajada fría no se cierra.",

  "Fill the moulds": "Llenar los moldes",
  "Put a block in each mould, with cloth and lid.":
    "Ponga un bloque en cada molde, con paño y tapa.",
  "Press loose bits into the corners, not on top.":
    "Apriete los trozos sueltos en las esquinas, no encima.",
  "Lay a mark with batch and date on each wheel: press, brine and store are shared.":
    "Ponga en cada pieza una marca con lote y fecha: prensa, salmuera y cava se comparten.",
  "Write down how many of each size you filled.": "Anote cuántos llenó de cada tamaño.",
  "Press the full moulds now and fill the rest after.":
    "Prense ya los moldes llenos y llene los demás después.",
  "Count again. Write down what happened to the curd that is missing.":
    "Cuente otra vez. Anote qué pasó con la cuajada que falta.",
  "Count again. Use a spare mould for what is over.":
    "Cuente otra vez. Use un molde de reserva para lo que sobra.",

  "Press: first time": "Primer prensado",
  "Stack the moulds straight in the press.": "Apile rectos los moldes en la prensa.",
  "Start with light pressure and write down the gauge.":
    "Empiece con poca presión y anote el manómetro.",
  "Turn the wheels now: one side closes sooner than the other.":
    "Voltee las piezas ya: un lado se cierra antes que el otro.",

  "Turn the wheels": "Voltear las piezas",
  "Let the pressure off before you reach in.":
    "Quite la presión antes de meter la mano.",
  "Turn each wheel, smooth its cloth and put it back.":
    "Voltee cada pieza, alise su paño y póngala otra vez.",
  "Get help: wheels out of the press cool and do not close.":
    "Pida ayuda: fuera de la prensa las piezas se enfrían y no se cierran.",

  "Press: second time": "Segundo prensado",
  "Press a little harder than before and write down the gauge.":
    "Prense un poco más fuerte que antes y anote el manómetro.",
  "Look now and then that the moulds stand straight.":
    "Mire de vez en cuando que los moldes estén rectos.",
  "Turn the wheels now.": "Voltee las piezas ya.",

  "Turn the wheels again": "Voltear otra vez las piezas",
  "Measure the pH of one wheel. It shows whether the starter works.":
    "Mida el pH de una pieza. Muestra si el fermento trabaja.",
  "Turn each wheel and put it back for the night.":
    "Voltee cada pieza y póngala otra vez para la noche.",
  "Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release. Keep the wheels where they are and read again in an hour.":
    "Anótelo y separe esta elaboración como lote aparte. Revise el lote del fermento, la prueba de antibióticos y la temperatura. Siga el procedimiento de su quesería y pregunte a su autoridad sanitaria antes de darle salida. Deje las piezas donde están y mida otra vez en una hora.",
  "Read again by the time shown, with the meter checked, and keep the wheels warm. If it still stands, ask the person in charge before the night: without living starter the wheels are not left warm overnight. Hold the make as a separate lot.":
    "Mida otra vez antes de la hora indicada, con el pH-metro comprobado, y mantenga las piezas calientes. Si sigue parado, pregunte al responsable antes de la noche: sin fermento vivo las piezas no se dejan calientes toda la noche. Separe la elaboración como lote aparte.",
  "Write it down. Ease the pressure for the night and unmould early.":
    "Anótelo. Baje la presión para la noche y desmolde pronto.",

  "Press overnight": "Prensar por la noche",
  "Set the pressure for the night and write down the gauge.":
    "Ponga la presión de la noche y anote el manómetro.",
  "Keep the room from getting cold.": "No deje que la sala se enfríe.",
  "Unmould now and read the pH: sour wheels crack.":
    "Desmolde ya y mida el pH: las piezas ácidas se agrietan.",
  "Read the pH before you unmould.": "Mida el pH antes de desmoldar.",

  "Turn and unmould": "Voltear y desmoldar",
  "Take the wheels out and trim their edges.": "Saque las piezas y recorte los bordes.",
  "Measure the pH and weigh a wheel of each size.":
    "Mida el pH y pese una pieza de cada tamaño.",
  "Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release. Read again in an hour before you brine.":
    "Anótelo y separe esta elaboración como lote aparte. Revise el lote del fermento, la prueba de antibióticos y la temperatura. Siga el procedimiento de su quesería y pregunte a su autoridad sanitaria antes de darle salida. Mida otra vez en una hora antes de la salmuera.",
  "Do not brine yet: salt does not help where the starter is dead. Read again by the time shown, with the meter checked. If it still stands, cool the wheels, hold them as a separate lot and ask your licensing authority what to test.":
    "No ponga aún en salmuera: la sal no ayuda donde el fermento está muerto. Mida otra vez antes de la hora indicada, con el pH-metro comprobado. Si sigue parado, enfríe las piezas, sepárelas como lote aparte y pregunte a su autoridad sanitaria qué analizar.",
  "Write it down. Brine at once: cold and salt slow the acid.":
    "Anótelo. A la salmuera ya: el frío y la sal frenan la acidez.",
  "Weigh again. Write it down: a lighter wheel takes salt faster.":
    "Pese otra vez. Anótelo: una pieza más ligera toma la sal más deprisa.",
  "Weigh again. Write it down: a heavier wheel takes salt more slowly.":
    "Pese otra vez. Anótelo: una pieza más pesada toma la sal más despacio.",
  "Wheels out of the press dry at the edge: go on to the brine.":
    "Fuera de la prensa se seca el borde de las piezas: siga con la salmuera.",

  "Brine the small wheels": "Salar las piezas pequeñas",
  "Check strength, temperature and pH of the brine first, and that each wheel bears its mark.":
    "Compruebe antes la concentración, la temperatura y el pH de la salmuera, y que cada pieza lleva su marca.",
  "Lower the small wheels in gently.": "Meta las piezas pequeñas con cuidado.",
  "Salt the tops of floating wheels and turn them each day.":
    "Eche sal sobre las piezas que flotan y voltéelas cada día.",
  "Take them out on time and let them drip.": "Sáquelas a tiempo y déjelas escurrir.",
  "Add salt until the strength is back, and stir. Weak brine softens the rind and lets unwanted growth in. Write it down.":
    "Añada sal hasta recuperar la concentración, y remueva. La salmuera floja ablanda la corteza y deja crecer lo que no se quiere. Anótelo.",
  "Add boiled, cooled water until the strength is back. Strong brine dries the rind.":
    "Añada agua hervida y enfriada hasta recuperar la concentración. La salmuera fuerte seca la corteza.",
  "Warm the brine slowly. Cold brine salts slowly: leave the wheels in longer.":
    "Caliente la salmuera despacio. La salmuera fría sala despacio: deje más tiempo las piezas.",
  "Cool the brine and write it down. Ask the person in charge.":
    "Enfríe la salmuera y anótelo. Pregunte a la persona a cargo.",
  "Bring the brine to the pH of the cheese by your site procedure.":
    "Lleve la salmuera al pH del queso con el procedimiento de su quesería.",
  "Take the wheels out now, and write down how long they were in.":
    "Saque las piezas ya, y anote cuánto tiempo estuvieron.",

  "Brine the large wheels": "Salar las piezas grandes",
  "Lower the large wheels in gently.": "Meta las piezas grandes con cuidado.",

  "Dry the wheels": "Secar las piezas",
  "Stand the wheels on clean shelves, not touching.":
    "Ponga las piezas en baldas limpias, sin que se toquen.",
  "Turn them once a day until the rind is dry to the touch.":
    "Voltéelas una vez al día hasta que la corteza esté seca al tacto.",
  "Weigh a wheel of each size.": "Pese una pieza de cada tamaño.",
  "Move the air a little more, but keep the wheels out of a draught.":
    "Mueva un poco más el aire, pero sin corriente sobre las piezas.",

  "Coat top and edge": "Recubrir cara y canto",
  "Follow the label of the coating.": "Siga la etiqueta del recubrimiento.",
  "Brush a thin, even coat on the top and the edge.":
    "Dé con brocha una capa fina y pareja en la cara y el canto.",
  "Leave it to dry before you turn the wheels.":
    "Deje secar antes de voltear las piezas.",
  "A wet coat means damp air: move the air a little more.":
    "Una capa mojada es señal de aire húmedo: mueva un poco más el aire.",

  "Coat the other side": "Recubrir la otra cara",
  "Turn the wheels and coat the other side and the edge.":
    "Voltee las piezas y recubra la otra cara y el canto.",
  "See that batch and date can still be read.":
    "Mire que lote y fecha aún se puedan leer.",
  "Leave it to dry.": "Deje secar.",

  "Wax the wheels": "Encerar las piezas",
  "Follow the label of the wax. Melt it over hot water, never on a flame.":
    "Siga la etiqueta de la cera. Fúndala al baño maría, nunca sobre la llama.",
  "See that the rind is clean and dry and that the mark stays readable under the wax.":
    "Mire que la corteza esté limpia y seca y que la marca se lea bajo la cera.",
  "Dip one side, let it set, then dip the other, until no bare spot is left.":
    "Bañe un lado, deje que cuaje, bañe el otro, hasta que no quede nada sin cubrir.",
  "Keep the wax warm and go on: wax that is too cold flakes off.":
    "Mantenga la cera caliente y siga: la cera demasiado fría se desprende.",
  "Ripen in the store": "Madurar en la cava",
  "Turn the wheels each day for two weeks, then twice a week.":
    "Voltee las piezas cada día dos semanas, y después dos veces por semana.",
  "Read temperature and damp of the store each day.":
    "Mida cada día la temperatura y la humedad de la cava.",
  "Wipe off mould and mend coat or wax.":
    "Quite el moho y repare el recubrimiento o la cera.",
  "Weigh a wheel of each size before it leaves.":
    "Pese una pieza de cada tamaño antes de que salga.",
  "Let the store warm slowly. Cold wheels ripen later: leave them longer.":
    "Deje que la cava se temple despacio. Las piezas frías maduran más tarde: déjelas más tiempo.",
  "Cool the store and look at the wheels for swelling. Write it down.":
    "Enfríe la cava y mire si las piezas se hinchan. Anótelo.",
  "The air is too dry: wet the floor or the air by your site procedure, and look at the coat for cracks.":
    "El aire está muy seco: moje el suelo o el aire con el procedimiento de su quesería, y mire si la capa tiene grietas.",
  "The air is too damp: move it a little more, and wipe the wheels.":
    "El aire está muy húmedo: muévalo un poco más y limpie las piezas.",
  "Do not release before the time your plan and your licensing authority ask for.":
    "No les dé salida antes del tiempo que piden su plan y su autoridad sanitaria.",
  "Read the store now and write down what you find. A gap in the record stays a gap.":
    "Mida la cava ahora y anote lo que encuentra. Un hueco en el registro sigue siendo un hueco.",

  "Shut the lid and start the stirrer.":
    "Cierre la tapa y ponga en marcha el agitador.",
  "Warm the milk to set": "Templar la leche para cuajar",
  "Start the stirrer and run warm water round the jacket.":
    "Ponga en marcha el agitador y pase agua templada por la camisa.",
  "Stop the warm water a little before the figure: the milk goes on rising.":
    "Corte el agua templada un poco antes de la cifra: la leche sigue subiendo.",
  "Check the warm water and the stirrer. Write down why it is slow.":
    "Revise el agua templada y el agitador. Anote por qué va lento.",
  "Stop the warm water and cool the jacket. Write down how warm it got: too warm harms the starter, and hot milk may no longer count as raw.":
    "Corte el agua templada y enfríe la camisa. Anote cuánto se calentó: demasiado calor daña el fermento, y la leche caliente puede ya no contar como cruda.",
  "Figures of our own, in round numbers: hot enough to thin out what spoils cheese, short enough to keep the curd firm, and with no claim to pasteurise. The air under the lid is heated too, so that foam and splashes get as hot as the milk.":
    "Cifras propias, en números redondos: bastante calor contra lo que estropea el queso, poco tiempo para que la cuajada quede firme, y sin pretender pasteurizar. También se calienta el aire bajo la tapa, para que la espuma y las salpicaduras se calienten como la leche.",
  "Round figures of this recipe: hot enough to thin out what spoils cheese, short enough to keep the curd firm, and with no claim to pasteurise. The air under the lid is heated too, so that foam and splashes get as hot as the milk.":
    "Cifras redondas de esta receta: bastante calor contra lo que estropea el queso, poco tiempo para que la cuajada quede firme, y sin pretender pasteurizar. También se calienta el aire bajo la tapa, para que la espuma y las salpicaduras se calienten como la leche.",
  "Add nothing. The figures are our own: this milk does not count as pasteurised.":
    "No añada nada. Las cifras son propias: esta leche no cuenta como pasteurizada.",
  "Add nothing. The figures are those of this recipe: this milk does not count as pasteurised.":
    "No añada nada. Las cifras son de esta receta: esta leche no cuenta como pasteurizada.",
  "Heat at once. Milk or air space was too cold: the hold starts again from the beginning once both are hot enough. Write it down.":
    "Caliente ya. La leche o el espacio de aire estaban demasiado fríos: la retención empieza de nuevo cuando ambos estén bastante calientes. Anótelo.",
  "A reading that was missed cannot be made up. Write it down and read both thermometers now.":
    "Una lectura perdida no se puede recuperar. Anótelo y lea ahora los dos termómetros.",

  // What to do now, in one sentence; {names} are figures of the step.
  "Once the drug test is negative, run {target/milk_volume_l} of milk into the tank.":
    "Con la prueba de antibióticos negativa, pase {target/milk_volume_l} de leche al tanque.",
  "Pump the milk into the clean vat; start the stirrer once covered.":
    "Pase la leche a la cuba limpia; arranque el agitador cuando quede cubierto.",
  "Keep the milk at {target/milk_temp_c} overnight, with the lid shut.":
    "Mantenga la leche a {target/milk_temp_c} toda la noche, con la tapa cerrada.",
  "Heat the milk to {end/at_least} and the air space to {target/air_space_temp_c}, stirring.":
    "Caliente la leche a {end/at_least} y el espacio de aire a {target/air_space_temp_c}, agitando.",
  "Heat the milk to {end/at_least}, with lid shut and stirrer on.":
    "Caliente la leche a {end/at_least}, con la tapa cerrada y el agitador en marcha.",
  "Warm the milk to {end/at_least}; stop the warm water a little before.":
    "Temple la leche a {end/at_least}; corte el agua templada un poco antes.",
  "Hold the milk at {target/milk_temp_c} for {lasts}, lid shut and stirrer on.":
    "Mantenga la leche a {target/milk_temp_c} durante {lasts}, tapa cerrada y agitador en marcha.",
  "Mark the end of the hold on the chart and write both thermometers beside it.":
    "Marque el final de la retención en el gráfico y anote al lado los dos termómetros.",
  "Turn the fans on and drain the hot water from the jacket.":
    "Encienda los ventiladores y vacíe el agua caliente de la camisa.",
  "Cool the milk to {end/at_most}; stop the cold water a little before.":
    "Enfríe la leche a {end/at_most}; corte el agua fría un poco antes.",
  "Lock out the drive, then fit the clean knives and stirrers.":
    "Bloquee el motor con candado y monte las liras y los agitadores limpios.",
  "Scatter {dose/starter} of starter over the milk, with the stirrer slow.":
    "Esparza {dose/starter} de fermento sobre la leche, con el agitador lento.",
  "Stir the starter slowly into the milk.": "Mezcle despacio el fermento en la leche.",
  "Stir in {dose/calcium_chloride} of calcium chloride, well diluted.":
    "Añada agitando {dose/calcium_chloride} de cloruro de calcio, bien diluido.",
  "Stir slowly while the starter wakes; read the pH before the rennet.":
    "Agite despacio mientras despierta el fermento; mida el pH antes del cuajo.",
  "Dilute {dose/rennet} of rennet in 10 times as much cool water and pour it in.":
    "Diluya {dose/rennet} de cuajo en 10 veces más de agua fresca y échelo.",
  "Stir for 2 minutes, then stop the stirrer and let the milk stand.":
    "Agite 2 minutos; después pare el agitador y deje quieta la leche.",
  "Keep the vat still; watch for the first flakes, then for a clean break.":
    "Deje quieta la cuba; espere los primeros flóculos y después el corte limpio.",
  "Cut slowly at first, then faster, until the pieces are even.":
    "Corte despacio al principio y luego más deprisa, hasta que los granos sean iguales.",
  "Heat water for both washes to {end/at_least}: a quarter of the milk's volume.":
    "Caliente agua a {end/at_least} para los dos lavados: un cuarto de la leche.",
  "Let the curd rest until the cut faces shine and hold together.":
    "Deje reposar la cuajada hasta que las caras del corte brillen y aguanten.",
  "Draw off {target/whey_drained_l} of whey through strainer and net.":
    "Saque {target/whey_drained_l} de suero por el colador y la red.",
  "Pour {pour/water_added_l} of water at {pour/water_temp_c}; stop when the curd reaches {end/at_least}.":
    "Eche {pour/water_added_l} de agua a {pour/water_temp_c}; pare con la cuajada a {end/at_least}.",
  "Stop the water once the curd reaches {end/at_least}.":
    "Pare el agua cuando la cuajada llegue a {end/at_least}.",
  "Stop the stirrer, lift it clear and let the curd sink.":
    "Pare el agitador, levántelo y deje que la cuajada se hunda.",
  "Draw off about {target/whey_drained_l} of whey, until you see the curd.":
    "Saque unos {target/whey_drained_l} de suero, hasta ver la cuajada.",
  "Stir at {target/curd_temp_c} until the pieces are springy and do not stick.":
    "Agite a {target/curd_temp_c} hasta que los granos sean elásticos y no se peguen.",
  "Move curd and whey to the warm table without breaking the curd.":
    "Pase cuajada y suero a la mesa templada sin romper la cuajada.",
  "Lay plates under the whey and set {target/bed_load_kg} of weights evenly.":
    "Ponga las placas bajo el suero y reparta {target/bed_load_kg} de pesos.",
  "Lay plates on the bed, under the whey, and set the weights evenly.":
    "Ponga placas sobre la cuajada, bajo el suero, y reparta los pesos.",
  "Leave {target/bed_load_kg} of weights on; let the whey run off at the end.":
    "Deje puestos {target/bed_load_kg} de pesos; deje salir el suero al final.",
  "Leave the weights on; let the whey run off at the end.":
    "Deje los pesos puestos; deje salir el suero al final.",
  "Lift the weights off one at a time; see whether the bed has knitted.":
    "Quite los pesos de uno en uno; mire si la cuajada está soldada.",
  "Mark small and large blocks, cut straight down and weigh one of each.":
    "Marque bloques pequeños y grandes, corte en vertical y pese uno de cada.",
  "Put a block in each mould, with its mark, cloth and lid.":
    "Ponga un bloque en cada molde, con su marca, paño y tapa.",
  "Press the small wheels at {target/press_gauge_kpa/small}, the large at {target/press_gauge_kpa/large}.":
    "Prense las piezas pequeñas a {target/press_gauge_kpa/small} y las grandes a {target/press_gauge_kpa/large}.",
  "Press the wheels at {target/press_gauge_kpa/small} and write down the gauge.":
    "Prense las piezas a {target/press_gauge_kpa/small} y anote el manómetro.",
  "Press the wheels at {target/press_gauge_kpa/large} and write down the gauge.":
    "Prense las piezas a {target/press_gauge_kpa/large} y anote el manómetro.",
  "Stack the moulds straight, press lightly and write down the gauge.":
    "Apile los moldes derechos, prense con suavidad y anote el manómetro.",
  "Let the pressure off, turn each wheel and smooth its cloth.":
    "Quite la presión, voltee cada pieza y alise su paño.",
  "Let the pressure off, measure the pH of one wheel and turn them all.":
    "Quite la presión, mida el pH de una pieza y voltéelas todas.",
  "Let the pressure off, take the wheels out, trim and weigh them.":
    "Quite la presión, saque las piezas, recórtelas y péselas.",
  "Keep the small wheels in brine of {target/brine_salt_frac} at {target/brine_temp_c}; turn them daily.":
    "Tenga las piezas pequeñas en salmuera al {target/brine_salt_frac} a {target/brine_temp_c}; voltéelas cada día.",
  "Keep the large wheels in brine of {target/brine_salt_frac} at {target/brine_temp_c}; turn them daily.":
    "Tenga las piezas grandes en salmuera al {target/brine_salt_frac} a {target/brine_temp_c}; voltéelas cada día.",
  "Turn the wheels once a day until the rind is dry to the touch.":
    "Voltee las piezas una vez al día hasta que la corteza esté seca al tacto.",
  "Brush a thin, even coat on top and edge; let it dry.":
    "Dé una capa fina y pareja de recubrimiento arriba y en el canto; deje secar.",
  "Turn the wheels and coat the other side and the edge; let it dry.":
    "Voltee las piezas y dé recubrimiento al otro lado y al canto; deje secar.",
  "Dip one side, let it set, then dip the other until none is bare.":
    "Sumerja un lado, deje cuajar la cera y sumerja el otro, sin dejar calvas.",
  "Keep the store at {target/store_temp_c} and {target/store_humidity_frac} damp; turn and wipe the wheels.":
    "Mantenga la cava a {target/store_temp_c} y {target/store_humidity_frac} de humedad; voltee y limpie las piezas.",
};
