// The recipes' own texts in French, by their exact English.

export const RECIPE = {
  "Washed-curd wheel": "Meule à caillé lavé",
  "A Gouda-type washed-curd wheel in two sizes, from cold milk to the store. Each figure names its source. Your site procedure, your licensing authority and the chart of your pasteuriser come before anything written here.":
    "Une meule à caillé lavé de type gouda, en deux tailles, du lait froid à la cave. Chaque chiffre cite sa source. La procédure de votre site, votre autorité de contrôle et le diagramme de votre pasteurisateur passent avant tout ce qui est écrit ici.",
  "Small wheel": "Petite meule",
  "Large wheel": "Grande meule",
  "Starter, direct, deep-frozen": "Ferment direct surgelé",
  "Bulk starter, if used in place of packs": "Levain, à la place des sachets",
  "Calcium chloride": "Chlorure de calcium",
  "Lay more weight on, spread evenly.": "Ajoutez du poids, bien réparti.",
  "Take weight off, so that the whey still runs out of the bed.":
    "Enlevez du poids, pour que le petit-lait s’écoule encore du gâteau.",
  "Raise the pressure slowly to the figure, and look whether whey runs clear.":
    "Montez la pression lentement jusqu’au chiffre, et regardez si le petit-lait sort clair.",
  "Let the pressure down to the figure: a skin that closes early keeps whey in.":
    "Baissez la pression jusqu’au chiffre : une croûte qui se ferme tôt retient du petit-lait.",
  "Annatto colour": "Colorant rocou",
  "Rennet, single strength": "Présure, force simple",

  "Receive the milk": "Recevoir le lait",
  "Check the drug test first. Do not use the milk without a negative result.":
    "Regardez d’abord le test d’antibiotiques. N’utilisez pas le lait sans résultat négatif.",
  "Measure the temperature and ask how old the oldest milk is.":
    "Mesurez la température et demandez l’âge du lait le plus vieux.",
  "Run the milk into the tank and measure how much there is.":
    "Faites couler le lait dans le tank et mesurez la quantité.",
  "Write it down and cool the milk at once. Follow your site procedure before you use it.":
    "Notez-le et refroidissez le lait tout de suite. Suivez la procédure de votre site avant de l’utiliser.",
  "Check the meter or dipstick. The doses follow the milk you measured; fill fewer moulds.":
    "Vérifiez le compteur ou la jauge. Les doses suivent le lait mesuré\u00a0; remplissez moins de moules.",
  "Check the meter or dipstick and the room left in the vat. The doses follow the milk you measured.":
    "Vérifiez le compteur ou la jauge et la place dans la cuve. Les doses suivent le lait mesuré.",
  "Do not start without the result of the drug test. If it is positive, keep the milk apart and follow your licensing authority.":
    "Ne commencez pas sans le résultat du test d’antibiotiques. S’il est positif, gardez le lait à part et suivez votre autorité de contrôle.",

  "Pump the milk to the vat": "Pomper le lait dans la cuve",
  "Check that the vat is clean, rinsed and its outlet shut.":
    "Vérifiez que la cuve est propre, rincée et sa vanne fermée.",
  "Join the hose and pump the milk over.": "Branchez le tuyau et pompez le lait.",
  "Start the stirrer when the milk covers it.":
    "Lancez le brasseur quand le lait le couvre.",
  "Cold milk must stay cold: cool the jacket and write down why.":
    "Le lait froid doit rester froid\u00a0: refroidissez la double enveloppe et notez pourquoi.",

  "Rest the milk cold": "Garder le lait au froid",
  "Keep the milk cold overnight, with the lid shut.":
    "Gardez le lait froid toute la nuit, couvercle fermé.",
  "Stir it gently now and then.": "Brassez doucement de temps en temps.",
  "Read the temperature at night and again before you heat.":
    "Mesurez la température le soir et avant de chauffer.",
  "Cool the milk at once and write down since when it was warm. Follow your site procedure before you use it.":
    "Refroidissez le lait tout de suite et notez depuis quand il était trop chaud. Suivez la procédure de votre site avant de l’utiliser.",
  "Start to heat, or ask the person in charge: old milk makes poor cheese.":
    "Commencez à chauffer, ou demandez au responsable\u00a0: un lait vieux fait un mauvais fromage.",

  "Heat the milk": "Chauffer le lait",
  "Shut the lid, set the chart and start the stirrer.":
    "Fermez le couvercle, mettez le diagramme en place et lancez le brasseur.",
  "Run hot water round the jacket and heat the air under the lid.":
    "Envoyez l’eau chaude dans la double enveloppe et chauffez l’air sous le couvercle.",
  "Read the milk and the air space as they rise.":
    "Mesurez le lait et l’air sous couvercle pendant la montée.",
  "Check the hot water, the jacket and the stirrer. Write down why it is slow.":
    "Vérifiez l’eau chaude, la double enveloppe et le brasseur. Notez pourquoi c’est lent.",
  "Turn the heat down. Too much heat makes a weak curd: write it down.":
    "Baissez la chauffe. Trop de chaleur donne un caillé faible\u00a0: notez-le.",
  "Heat the air space too: it must be hotter than the milk has to be before the hold can start.":
    "Chauffez aussi l’air sous couvercle\u00a0: il doit être plus chaud que ce qu’on demande au lait avant que le maintien puisse commencer.",

  "Hold the milk hot": "Maintenir le lait chaud",
  "Keep the lid shut and the stirrer on for the whole hold.":
    "Gardez le couvercle fermé et le brasseur en marche pendant tout le maintien.",
  "Read milk and air space together, each time the countdown asks.":
    "Relevez ensemble le lait et l’air sous couvercle chaque fois que le compte à rebours le demande.",
  "Read the milk and the air space every 5 minutes.":
    "Mesurez le lait et l’air sous couvercle toutes les 5\u00a0minutes.",
  "Add nothing. The chart of the pasteuriser is the record that counts.":
    "N’ajoutez rien. C’est le diagramme du pasteurisateur qui fait foi.",
  "Heat at once. Milk or air space was too cold: the hold starts again from the beginning once both are hot enough. Write it down and follow your site procedure and licensing authority.":
    "Chauffez tout de suite. Le lait ou l’air sous couvercle était trop froid\u00a0: le maintien recommence au début dès que les deux sont assez chauds. Notez-le et suivez la procédure de votre site et votre autorité de contrôle.",
  "Turn the heat down and write it down.": "Baissez la chauffe et notez-le.",
  "Do not end the hold: it must last the whole time without a break.":
    "Ne finissez pas le maintien\u00a0: il doit durer tout le temps, sans coupure.",
  "A reading that was missed cannot be made up. Write it down and ask the person in charge before any milk leaves the vat.":
    "Une mesure manquée ne se rattrape pas. Notez-le et demandez au responsable avant que du lait quitte la cuve.",

  "Mark the chart": "Marquer le diagramme",
  "Before any milk leaves the vat, mark the end of the hold on the chart.":
    "Avant que du lait quitte la cuve, marquez la fin du maintien sur le diagramme.",
  "Write both thermometers, the air space, the milk and your initials on the chart.":
    "Écrivez les deux thermomètres, l’air sous couvercle, le lait et vos initiales sur le diagramme.",
  "The recorder must not read higher than the indicator.":
    "L’enregistreur ne doit pas lire plus haut que l’indicateur.",
  "If the recorder reads above the indicator, stop. Write it down and ask your licensing authority how to go on.":
    "Si l’enregistreur lit plus haut que l’indicateur, arrêtez. Notez-le et demandez la suite à votre autorité de contrôle.",
  "Do not let milk leave the vat. Write it down and follow your site procedure and licensing authority.":
    "Ne laissez pas de lait quitter la cuve. Notez-le et suivez la procédure de votre site et votre autorité de contrôle.",
  "Do not let milk leave the vat until the chart is marked.":
    "Ne laissez pas de lait quitter la cuve avant d’avoir marqué le diagramme.",

  "Drain the hot jacket": "Vider la double enveloppe chaude",
  "Turn the room fans on to carry the steam away.":
    "Allumez les ventilateurs de la salle pour chasser la vapeur.",
  "Drain the hot water from the jacket.": "Videz l’eau chaude de la double enveloppe.",
  "Turn the fans off when the jacket is empty. Leave them off during the make.":
    "Éteignez les ventilateurs quand la double enveloppe est vide. Laissez-les éteints pendant la fabrication.",
  "Check the drain valve. Hot milk goes on cooking: cool it as soon as you can.":
    "Vérifiez la vanne de vidange. Le lait chaud continue de cuire\u00a0: refroidissez-le dès que possible.",

  "Cool to set": "Refroidir pour la prise",
  "Run cold water round the jacket and keep the stirrer on.":
    "Envoyez l’eau froide dans la double enveloppe et laissez le brasseur en marche.",
  "Read the milk every 10 minutes.": "Mesurez le lait toutes les 10\u00a0minutes.",
  "Stop the cold water a little before the figure: the milk goes on falling.":
    "Coupez l’eau froide un peu avant la cible\u00a0: le lait continue de descendre.",
  "Check the cold water and the stirrer. Write down why it is slow.":
    "Vérifiez l’eau froide et le brasseur. Notez pourquoi c’est lent.",
  "Stop the cold water. Warm the milk gently to the figure before you add the starter.":
    "Coupez l’eau froide. Réchauffez doucement le lait jusqu’à la cible avant d’ajouter le ferment.",

  "Fit knives and stirrers": "Monter couteaux et brasseurs",
  "Switch the drive off and lock it out.": "Coupez le moteur et cadenassez-le.",
  "When the lids are cool enough to touch, take them off.":
    "Quand on peut toucher les couvercles, enlevez-les.",
  "Fit the clean knives and stirrers.": "Montez les couteaux et les brasseurs propres.",
  "See that all hands and tools are out, then take off your lock.":
    "Vérifiez que mains et outils sont sortis, puis enlevez votre cadenas.",
  "Ask for a second pair of hands: the starter waits for this.":
    "Demandez de l’aide\u00a0: le ferment attend cela.",

  "Add the starter": "Ajouter le ferment",
  "Keep the starter deep-frozen until this moment. Check its lot and date.":
    "Gardez le ferment surgelé jusqu’à ce moment. Vérifiez son lot et sa date.",
  "Measure the pH and the temperature of the milk.":
    "Mesurez le pH et la température du lait.",
  "Scatter the starter over the milk with the stirrer slow.":
    "Semez le ferment sur le lait, brasseur lent.",
  "The milk is sour already. Write it down and ask the person in charge before you go on.":
    "Le lait est déjà acide. Notez-le et demandez au responsable avant de continuer.",
  "Check the pH meter against a standard, and the milk for water or cleaner left in the vat.":
    "Contrôlez le pH-mètre avec une solution étalon, et cherchez de l’eau ou du produit de nettoyage resté dans la cuve.",
  "Warm the milk gently first: cold milk makes a slow starter.":
    "Réchauffez d’abord doucement le lait\u00a0: un lait froid ralentit le ferment.",
  "Cool the milk first: too warm harms the starter.":
    "Refroidissez d’abord le lait\u00a0: trop chaud abîme le ferment.",
  "Add the rest now and write it down. A short dose makes a slow vat.":
    "Ajoutez le reste maintenant et notez-le. Une dose trop faible fait une cuve lente.",
  "Write it down. Expect the acid early and read the pH more often.":
    "Notez-le. L’acidité viendra tôt\u00a0: mesurez le pH plus souvent.",

  "Ripen the milk": "Maturer le lait",
  "Stir slowly while the starter wakes.":
    "Brassez lentement pendant que le ferment s’éveille.",
  "Stir in calcium chloride, well diluted, and colour if you use it.":
    "Ajoutez en brassant le chlorure de calcium bien dilué, et le colorant si vous en mettez.",
  "Measure the pH before the rennet.": "Mesurez le pH avant la présure.",
  "Give it up to 60 minutes and read again. Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release.":
    "Donnez jusqu’à 60\u00a0minutes et mesurez de nouveau. Notez-le et gardez cette fabrication comme lot à part. Vérifiez lot de ferment, test d’antibiotiques et température. Suivez la procédure de votre site et demandez à votre autorité de contrôle avant de libérer le lot.",
  "Add the rennet now. Write it down. Check the pH meter and the thermometer. Go on to the next step sooner.":
    "Ajoutez la présure maintenant. Notez-le. Vérifiez pH-mètre et thermomètre. Passez plus tôt à l’étape suivante.",
  "Warm the jacket gently and stir.":
    "Réchauffez doucement la double enveloppe et brassez.",
  "Cool the jacket gently and stir.":
    "Refroidissez doucement la double enveloppe et brassez.",
  "Add the rest before the rennet and write it down.":
    "Ajoutez le reste avant la présure et notez-le.",
  "Write it down and ask the person in charge: calcium chloride has a legal limit.":
    "Notez-le et demandez au responsable\u00a0: la loi limite le chlorure de calcium.",
  "Write down why. Go on as soon as you can and watch the pH.":
    "Notez pourquoi. Continuez dès que possible et surveillez le pH.",

  "Add the rennet": "Ajouter la présure",
  "Mix the rennet into 10 times as much cool water without chlorine, just before use.":
    "Mélangez la présure à 10 fois autant d’eau fraîche sans chlore, au dernier moment.",
  "Begin this step as you pour: the clock for the cut starts here.":
    "Commencez cette étape en versant\u00a0: le temps jusqu’au décaillage se compte d’ici.",
  "Spread it over the whole vat and stir for about 2 minutes.":
    "Versez sur toute la cuve et brassez environ 2\u00a0minutes.",
  "Stop the stirrer, lift it clear and let the milk stand still.":
    "Arrêtez le brasseur, relevez-le et laissez le lait immobile.",
  "Stop stirring now: stirring breaks the young curd.":
    "Arrêtez de brasser\u00a0: brasser casse le jeune caillé.",
  "Write it down and do not add more once the milk stands still. Expect a later cut.":
    "Notez-le et n’ajoutez plus rien une fois le lait immobile. Le décaillage viendra plus tard.",
  "Write it down. Expect an earlier cut and test sooner.":
    "Notez-le. Le décaillage viendra plus tôt\u00a0: testez plus tôt.",
  "Write it down. Cold milk sets slowly: the test for flocculation still tells you when to cut.":
    "Notez-le. Un lait froid prend lentement\u00a0: le test de floculation vous dit toujours quand décailler.",
  "Write it down. Warm milk sets fast: test sooner.":
    "Notez-le. Un lait chaud prend vite\u00a0: testez plus tôt.",

  "Let the milk set": "Laisser prendre le lait",
  "Keep the vat still, out of draughts.":
    "Laissez la cuve immobile, sans courant d’air.",
  "From about 8 minutes test for the first flakes, and record when you see them.":
    "Dès 8\u00a0minutes environ, cherchez les premiers flocons, et saisissez quand vous les voyez.",
  "A few minutes before the cut is due, test how the curd breaks.":
    "Quelques minutes avant le décaillage, testez la cassure du caillé.",
  "Wait for a clean break; do not cut a soft curd. Write down rennet lot, temperature and pH, and check the dose for next time.":
    "Attendez une cassure nette\u00a0; ne décaillez pas un caillé mou. Notez lot de présure, température et pH, et vérifiez la dose pour la prochaine fois.",
  "Test the break now and cut as soon as it is clean.":
    "Testez la cassure maintenant et décaillez dès qu’elle est nette.",
  "Do not stir. Warm the jacket very gently, or wait longer.":
    "Ne brassez pas. Réchauffez très doucement la double enveloppe, ou attendez plus.",

  "Cut the curd": "Décailler",
  "Measure the pH of the whey at the first cut.":
    "Mesurez le pH du petit-lait à la première coupe.",
  "Start slow, then cut faster step by step.":
    "Commencez lentement, puis coupez plus vite peu à peu.",
  "Stop and lock the drive to scrape the walls. Stir, then cut again.":
    "Arrêtez et cadenassez le moteur pour racler les parois. Brassez, puis coupez encore.",
  "Go on until the pieces are even.": "Continuez jusqu’à un grain régulier.",
  "Do not chase the last lumps: stop cutting, write it down and heal.":
    "Ne courez pas après les derniers morceaux\u00a0: arrêtez de couper, notez-le et laissez reposer.",
  "Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release.":
    "Notez-le et gardez cette fabrication comme lot à part. Vérifiez lot de ferment, test d’antibiotiques et température. Suivez la procédure de votre site et demandez à votre autorité de contrôle avant de libérer le lot.",
  "Write it down. Check the pH meter and the thermometer. Go on to the next step sooner. Shorten the stirring.":
    "Notez-le. Vérifiez pH-mètre et thermomètre. Passez plus tôt à l’étape suivante. Brassez moins longtemps.",

  "Heat the wash water": "Chauffer l’eau de lavage",
  "Use only water that your plan allows for washing curd.":
    "Prenez seulement l’eau que votre plan permet pour laver le caillé.",
  "Heat enough for both washes, a quarter of the milk's volume.":
    "Chauffez assez pour les deux lavages, un quart du volume du lait.",
  "Read its temperature until it reaches the figure.":
    "Mesurez sa température jusqu’à ce qu’elle atteigne la cible.",
  "The wash waits for this water. Keep the curd moving and watch its pH.":
    "Le lavage attend cette eau. Gardez le caillé en mouvement et surveillez son pH.",
  "Mix in cold water before you use it.":
    "Ajoutez de l’eau froide avant de l’utiliser.",

  "Heal the curd": "Laisser reposer le caillé",
  "Let the curd rest without stirring.": "Laissez le caillé reposer sans brasser.",
  "Wait until the cut faces shine and hold together.":
    "Attendez que les faces coupées brillent et se tiennent.",
  "Start the next step before the curd mats at the bottom.":
    "Passez à l’étape suivante avant que le caillé se soude au fond.",

  "Draw off the first whey": "Soutirer le premier petit-lait",
  "Stop the stirrer and let the curd sink. Put strainer and net in place to catch stray curd.":
    "Arrêtez le brasseur et laissez le caillé descendre. Mettez crépine et filet pour retenir les grains égarés.",
  "Measure the pH of the whey, or its acidity.":
    "Mesurez le pH du petit-lait, ou son acidité.",
  "Draw off about a third of the whey and measure how much.":
    "Soutirez environ un tiers du petit-lait et mesurez combien.",
  "Draw off more before the wash, or the water will not warm the curd to the figure.":
    "Soutirez plus avant le lavage, ou l’eau ne chauffera pas le caillé jusqu’à la cible.",
  "Read the pH again by the time shown, with the meter checked, and keep the curd at its temperature. Do not wash while it stands. If it still stands, ask the person in charge: hold the make as a separate lot or end it. Add no acid and no second starter to make up for it.":
    "Mesurez de nouveau le pH avant l’heure indiquée, pH-mètre vérifié, et gardez le caillé à sa température. Ne lavez pas tant qu’il est arrêté. S’il l’est encore, demandez au responsable\u00a0: mettre la fabrication à part comme lot, ou l’arrêter. N’ajoutez ni acide ni second ferment pour compenser.",
  "Write it down. Less water is needed to reach the figure: add it slowly.":
    "Notez-le. Il faut moins d’eau pour atteindre la cible\u00a0: ajoutez-la lentement.",
  "Write it down. Check the pH meter and the thermometer. Go on to the next step sooner.":
    "Notez-le. Vérifiez pH-mètre et thermomètre. Passez plus tôt à l’étape suivante.",

  "Stir the curd": "Brasser le caillé",
  "Stir so that the pieces move freely and do not break.":
    "Brassez pour que les grains bougent bien sans se casser.",
  "Read the temperature of the curd at the end.":
    "Mesurez la température du caillé à la fin.",
  "Stir on: soft curd breaks in the wash.":
    "Brassez encore\u00a0: un caillé mou se casse au lavage.",

  "Wash: first water": "Premier lavage",
  "Read the water, then run it in slowly with the stirrer on.":
    "Mesurez l’eau, puis versez-la lentement, brasseur en marche.",
  "Add most of it, read the curd, then add the rest.":
    "Versez-en la plus grande part, mesurez le caillé, puis versez le reste.",
  "Stop when the curd reaches the figure. Measure the water used.":
    "Arrêtez quand le caillé atteint la cible. Mesurez l’eau versée.",
  "Add a little more hot water, slowly, and read again.":
    "Ajoutez encore un peu d’eau chaude, lentement, et mesurez de nouveau.",
  "Stop the water and stir. Too fast makes a skin that holds the whey in.":
    "Coupez l’eau et brassez. Trop vite fait une peau qui retient le petit-lait.",
  "Slow the water down: 1 degree in 3 minutes or slower.":
    "Ralentissez l’eau\u00a0: 1 degré en 3\u00a0minutes ou plus lentement.",
  "Less water leaves more milk sugar: watch the pH.":
    "Moins d’eau laisse plus de sucre du lait\u00a0: surveillez le pH.",
  "More water leaves less milk sugar: the end pH may stay high.":
    "Plus d’eau laisse moins de sucre du lait\u00a0: le pH final peut rester haut.",

  "Let the curd settle": "Laisser descendre le caillé",
  "Stop the stirrer and lift it clear.": "Arrêtez le brasseur et relevez-le.",
  "Let the curd sink.": "Laissez le caillé descendre.",
  "Draw off the whey now, before the curd mats.":
    "Soutirez le petit-lait maintenant, avant que le caillé se soude.",

  "Draw off the second whey": "Soutirer le second petit-lait",
  "Keep strainer and net in place.": "Gardez crépine et filet en place.",
  "Draw off until you see the curd in the whey, and measure how much.":
    "Soutirez jusqu’à voir le caillé dans le petit-lait, et mesurez combien.",
  "Draw off more, or the second water will not warm the curd enough.":
    "Soutirez plus, ou la deuxième eau ne chauffera pas assez le caillé.",
  "Stop before the curd lies dry. Write it down.":
    "Arrêtez avant que le caillé soit à sec. Notez-le.",

  "Wash: second water": "Deuxième lavage",
  "Mix cold water into the hot until it reads the figure.":
    "Mélangez de l’eau froide à la chaude jusqu’à la cible.",
  "Run it in slowly with the stirrer on, and read the curd often.":
    "Versez-la lentement, brasseur en marche, et mesurez souvent le caillé.",
  "Stop the water and stir. Cool the jacket a little and write it down.":
    "Coupez l’eau et brassez. Refroidissez un peu la double enveloppe et notez-le.",

  "Stir warm": "Brasser à chaud",
  "Stir until the pieces are springy and do not stick.":
    "Brassez jusqu’à un grain élastique qui ne colle pas.",
  "Press a handful: it should hold, then break apart.":
    "Pressez une poignée\u00a0: elle doit tenir, puis se défaire.",
  "Warm the jacket gently.": "Réchauffez doucement la double enveloppe.",
  "Cool the jacket gently.": "Refroidissez doucement la double enveloppe.",

  "Move the curd to the table": "Passer le caillé sur la table",
  "Check that the drain table and its cloths are clean and warm.":
    "Vérifiez que la table d’égouttage et ses toiles sont propres et tièdes.",
  "Pump or scoop curd and whey over, without breaking the curd.":
    "Passez caillé et petit-lait à la pompe ou à la pelle, sans casser le caillé.",
  "Level the bed while whey still covers it.":
    "Égalisez le gâteau de caillé tant que le petit-lait le couvre.",
  "Cold curd does not knit: cover the bed and go on.":
    "Un caillé froid ne se soude pas\u00a0: couvrez le gâteau et continuez.",

  "Press the bed": "Presser le gâteau",
  "Lay plates on the bed, under the whey.":
    "Posez les plaques sur le gâteau, sous le petit-lait.",
  "Set the weights evenly and write down the load.":
    "Posez les poids également et notez la charge.",

  "Change the weights round": "Changer les poids de place",
  "Move the weights to the other end, one at a time.":
    "Passez les poids à l’autre bout, un par un.",
  "See that the bed is the same height all over.":
    "Vérifiez que le gâteau a partout la même hauteur.",
  "Put the weights back on: the bed cools.":
    "Remettez les poids\u00a0: le gâteau refroidit.",

  "Press the bed again": "Presser encore le gâteau",
  "Leave the weights on.": "Laissez les poids.",
  "Let the whey run off at the end.": "Laissez couler le petit-lait à la fin.",
  "Leave the weights on for the whole time.":
    "Laissez les poids pendant tout le temps.",

  "Take the weights off": "Enlever les poids",
  "Lift the weights off, one at a time.": "Enlevez les poids, un par un.",
  "Look at a cut edge: has the bed knitted into one piece?":
    "Regardez un bord coupé\u00a0: le gâteau est-il soudé d’une pièce\u00a0?",
  "Put the weights back for 5 minutes and look again. Write it down.":
    "Remettez les poids 5\u00a0minutes et regardez de nouveau. Notez-le.",

  "Cut the blocks": "Couper les blocs",
  "Measure the bed and mark small and large blocks.":
    "Mesurez le gâteau et marquez petits et grands blocs.",
  "Cut straight down and keep your free hand behind the blade.":
    "Coupez bien droit et gardez la main libre derrière la lame.",
  "Weigh a block of each size before you cut the rest.":
    "Pesez un bloc de chaque taille avant de couper le reste.",
  "Cover the blocks: cold curd does not close.":
    "Couvrez les blocs\u00a0: un caillé froid ne se ferme pas.",

  "Fill the moulds": "Remplir les moules",
  "Put a block in each mould, with cloth and lid.":
    "Mettez un bloc dans chaque moule, avec toile et foncet (couvercle).",
  "Press loose bits into the corners, not on top.":
    "Pressez les miettes dans les coins, pas dessus.",
  "Lay a mark with batch and date on each wheel: press, brine and store are shared.":
    "Posez sur chaque meule une marque avec lot et date\u00a0: presse, saumure et cave sont partagées.",
  "Write down how many of each size you filled.":
    "Notez combien de moules remplis de chaque taille.",
  "Press the full moulds now and fill the rest after.":
    "Pressez maintenant les moules pleins et remplissez le reste après.",
  "Count again. Write down what happened to the curd that is missing.":
    "Recomptez. Notez où est passé le caillé qui manque.",
  "Count again. Use a spare mould for what is over.":
    "Recomptez. Prenez un moule de réserve pour le reste.",

  "Press: first time": "Premier pressage",
  "Stack the moulds straight in the press.":
    "Empilez les moules bien droits dans la presse.",
  "Start with light pressure and write down the gauge.":
    "Commencez à faible pression et notez le manomètre.",
  "Turn the wheels now: one side closes sooner than the other.":
    "Retournez les meules maintenant\u00a0: un côté se ferme avant l’autre.",

  "Turn the wheels": "Retourner les meules",
  "Let the pressure off before you reach in.":
    "Relâchez la pression avant d’y mettre les mains.",
  "Turn each wheel, smooth its cloth and put it back.":
    "Retournez chaque meule, lissez sa toile et remettez-la.",
  "Get help: wheels out of the press cool and do not close.":
    "Faites-vous aider\u00a0: hors de la presse, les meules refroidissent et ne se ferment pas.",

  "Press: second time": "Deuxième pressage",
  "Press a little harder than before and write down the gauge.":
    "Pressez un peu plus qu’avant et notez le manomètre.",
  "Look now and then that the moulds stand straight.":
    "Regardez de temps en temps si les moules sont droits.",
  "Turn the wheels now.": "Retournez les meules maintenant.",

  "Turn the wheels again": "Retourner encore les meules",
  "Measure the pH of one wheel. It shows whether the starter works.":
    "Mesurez le pH d’une meule. Il montre si le ferment travaille.",
  "Turn each wheel and put it back for the night.":
    "Retournez chaque meule et remettez-la pour la nuit.",
  "Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release. Keep the wheels where they are and read again in an hour.":
    "Notez-le et gardez cette fabrication comme lot à part. Vérifiez lot de ferment, test d’antibiotiques et température. Suivez la procédure de votre site et demandez à votre autorité de contrôle avant de libérer le lot. Laissez les meules où elles sont et mesurez de nouveau dans une heure.",
  "Read again by the time shown, with the meter checked, and keep the wheels warm. If it still stands, ask the person in charge before the night: without living starter the wheels are not left warm overnight. Hold the make as a separate lot.":
    "Mesurez de nouveau avant l’heure indiquée, pH-mètre vérifié, et gardez les meules au chaud. S’il est encore arrêté, demandez au responsable avant la nuit\u00a0: sans ferment vivant, les meules ne restent pas au chaud toute la nuit. Mettez la fabrication à part comme lot.",
  "Write it down. Ease the pressure for the night and unmould early.":
    "Notez-le. Baissez la pression pour la nuit et démoulez tôt.",

  "Press overnight": "Presser la nuit",
  "Set the pressure for the night and write down the gauge.":
    "Réglez la pression pour la nuit et notez le manomètre.",
  "Keep the room from getting cold.": "Ne laissez pas la salle refroidir.",
  "Unmould now and read the pH: sour wheels crack.":
    "Démoulez maintenant et mesurez le pH\u00a0: les meules trop acides se fendent.",
  "Read the pH before you unmould.": "Mesurez le pH avant de démouler.",

  "Turn and unmould": "Retourner et démouler",
  "Take the wheels out and trim their edges.":
    "Sortez les meules et coupez les bavures du bord.",
  "Measure the pH and weigh a wheel of each size.":
    "Mesurez le pH et pesez une meule de chaque taille.",
  "Write it down and hold this make as a separate lot. Check starter lot, drug test and temperature. Follow your site procedure and ask your licensing authority before release. Read again in an hour before you brine.":
    "Notez-le et gardez cette fabrication comme lot à part. Vérifiez lot de ferment, test d’antibiotiques et température. Suivez la procédure de votre site et demandez à votre autorité de contrôle avant de libérer le lot. Mesurez de nouveau dans une heure, avant la saumure.",
  "Do not brine yet: salt does not help where the starter is dead. Read again by the time shown, with the meter checked. If it still stands, cool the wheels, hold them as a separate lot and ask your licensing authority what to test.":
    "Ne mettez pas encore en saumure\u00a0: le sel n’aide pas là où le ferment est mort. Mesurez de nouveau avant l’heure indiquée, pH-mètre vérifié. S’il est encore arrêté, refroidissez les meules, mettez-les à part comme lot et demandez à votre autorité de contrôle ce qu’il faut analyser.",
  "Write it down. Brine at once: cold and salt slow the acid.":
    "Notez-le. Mettez tout de suite en saumure\u00a0: froid et sel ralentissent l’acidité.",
  "Weigh again. Write it down: a lighter wheel takes salt faster.":
    "Pesez de nouveau. Notez-le\u00a0: une meule plus légère prend le sel plus vite.",
  "Weigh again. Write it down: a heavier wheel takes salt more slowly.":
    "Pesez de nouveau. Notez-le\u00a0: une meule plus lourde prend le sel plus lentement.",
  "Wheels out of the press dry at the edge: go on to the brine.":
    "Hors de la presse, le bord des meules sèche\u00a0: passez à la saumure.",

  "Brine the small wheels": "Saumurer les petites meules",
  "Check strength, temperature and pH of the brine first, and that each wheel bears its mark.":
    "Vérifiez d’abord concentration, température et pH de la saumure, et que chaque meule porte sa marque.",
  "Lower the small wheels in gently.": "Plongez doucement les petites meules.",
  "Salt the tops of floating wheels and turn them each day.":
    "Salez le dessus des meules qui flottent et retournez-les chaque jour.",
  "Take them out on time and let them drip.":
    "Sortez-les à l’heure et laissez-les s’égoutter.",
  "Add salt until the strength is back, and stir. Weak brine softens the rind and lets unwanted growth in. Write it down.":
    "Ajoutez du sel jusqu’à la bonne concentration, et brassez. Une saumure faible ramollit la croûte et laisse pousser ce qu’on ne veut pas. Notez-le.",
  "Add boiled, cooled water until the strength is back. Strong brine dries the rind.":
    "Ajoutez de l’eau bouillie puis refroidie jusqu’à la bonne concentration. Une saumure forte dessèche la croûte.",
  "Warm the brine slowly. Cold brine salts slowly: leave the wheels in longer.":
    "Réchauffez lentement la saumure. Une saumure froide sale lentement\u00a0: laissez les meules plus longtemps.",
  "Cool the brine and write it down. Ask the person in charge.":
    "Refroidissez la saumure et notez-le. Demandez au responsable.",
  "Bring the brine to the pH of the cheese by your site procedure.":
    "Amenez la saumure au pH du fromage selon la procédure de votre site.",
  "Take the wheels out now, and write down how long they were in.":
    "Sortez les meules maintenant, et notez combien de temps elles y sont restées.",

  "Brine the large wheels": "Saumurer les grandes meules",
  "Lower the large wheels in gently.": "Plongez doucement les grandes meules.",

  "Dry the wheels": "Sécher les meules",
  "Stand the wheels on clean shelves, not touching.":
    "Posez les meules sur des planches propres, sans qu’elles se touchent.",
  "Turn them once a day until the rind is dry to the touch.":
    "Retournez-les une fois par jour jusqu’à une croûte sèche au toucher.",
  "Weigh a wheel of each size.": "Pesez une meule de chaque taille.",
  "Move the air a little more, but keep the wheels out of a draught.":
    "Remuez un peu plus l’air, mais sans courant d’air sur les meules.",

  "Coat top and edge": "Enduire dessus et talon",
  "Follow the label of the coating.": "Suivez l’étiquette de l’enduit.",
  "Brush a thin, even coat on the top and the edge.":
    "Passez au pinceau une couche mince et égale sur le dessus et le talon.",
  "Leave it to dry before you turn the wheels.":
    "Laissez sécher avant de retourner les meules.",
  "A wet coat means damp air: move the air a little more.":
    "Un enduit qui reste mouillé montre un air humide\u00a0: remuez un peu plus l’air.",

  "Coat the other side": "Enduire l’autre face",
  "Turn the wheels and coat the other side and the edge.":
    "Retournez les meules et enduisez l’autre face et le talon.",
  "See that batch and date can still be read.":
    "Voyez que lot et date restent lisibles.",
  "Leave it to dry.": "Laissez sécher.",

  "Wax the wheels": "Paraffiner les meules",
  "Follow the label of the wax. Melt it over hot water, never on a flame.":
    "Suivez l’étiquette de la cire. Faites-la fondre au bain-marie, jamais sur une flamme.",
  "See that the rind is clean and dry and that the mark stays readable under the wax.":
    "Voyez que la croûte est propre et sèche et que la marque reste lisible sous la cire.",
  "Dip one side, let it set, then dip the other, until no bare spot is left.":
    "Trempez un côté, laissez figer, trempez l’autre, jusqu’à ce que rien ne reste nu.",
  "Keep the wax warm and go on: wax that is too cold flakes off.":
    "Gardez la cire chaude et continuez\u00a0: une cire trop froide s’écaille.",
  "Ripen in the store": "Affiner en cave",
  "Turn the wheels each day for two weeks, then twice a week.":
    "Retournez les meules chaque jour pendant deux semaines, puis deux fois par semaine.",
  "Read temperature and damp of the store each day.":
    "Mesurez chaque jour la température et l’humidité de la cave.",
  "Wipe off mould and mend coat or wax.":
    "Essuyez la moisissure et réparez l’enduit ou la cire.",
  "Weigh a wheel of each size before it leaves.":
    "Pesez une meule de chaque taille avant son départ.",
  "Let the store warm slowly. Cold wheels ripen later: leave them longer.":
    "Laissez la cave se réchauffer lentement. Des meules froides s’affinent plus tard\u00a0: laissez-les plus longtemps.",
  "Cool the store and look at the wheels for swelling. Write it down.":
    "Refroidissez la cave et regardez si les meules gonflent. Notez-le.",
  "The air is too dry: wet the floor or the air by your site procedure, and look at the coat for cracks.":
    "L’air est trop sec\u00a0: mouillez le sol ou l’air selon la procédure de votre site, et cherchez des fentes dans l’enduit.",
  "The air is too damp: move it a little more, and wipe the wheels.":
    "L’air est trop humide\u00a0: remuez-le un peu plus, et essuyez les meules.",
  "Do not release before the time your plan and your licensing authority ask for.":
    "Ne libérez pas le lot avant le temps que demandent votre plan et votre autorité de contrôle.",
  "Read the store now and write down what you find. A gap in the record stays a gap.":
    "Mesurez la cave maintenant et notez le résultat. Un trou dans le registre reste un trou.",

  "Shut the lid and start the stirrer.":
    "Fermez le couvercle et mettez le brasseur en marche.",
  "Warm the milk to set": "Tiédir le lait pour l’emprésurage",
  "Start the stirrer and run warm water round the jacket.":
    "Mettez le brasseur en marche et faites passer de l’eau tiède dans la double enveloppe.",
  "Stop the warm water a little before the figure: the milk goes on rising.":
    "Arrêtez l’eau tiède un peu avant le chiffre\u00a0: le lait monte encore.",
  "Check the warm water and the stirrer. Write down why it is slow.":
    "Vérifiez l’eau tiède et le brasseur. Notez pourquoi c’est lent.",
  "Stop the warm water and cool the jacket. Write down how warm it got: too warm harms the starter, and hot milk may no longer count as raw.":
    "Arrêtez l’eau tiède et refroidissez la double enveloppe. Notez jusqu’où c’est monté\u00a0: trop chaud nuit au ferment, et un lait chaud peut ne plus compter comme cru.",
  "Figures of our own, in round numbers: hot enough to thin out what spoils cheese, short enough to keep the curd firm, and with no claim to pasteurise. The air under the lid is heated too, so that foam and splashes get as hot as the milk.":
    "Chiffres à nous, ronds\u00a0: assez chaud contre ce qui gâte le fromage, assez court pour un caillé ferme, sans prétendre pasteuriser. L’air sous le couvercle est chauffé aussi, pour que mousse et éclaboussures chauffent comme le lait.",
  "Round figures of this recipe: hot enough to thin out what spoils cheese, short enough to keep the curd firm, and with no claim to pasteurise. The air under the lid is heated too, so that foam and splashes get as hot as the milk.":
    "Chiffres ronds de cette recette\u00a0: assez chaud contre ce qui gâte le fromage, assez court pour un caillé ferme, sans prétendre pasteuriser. L’air sous le couvercle est chauffé aussi, pour que mousse et éclaboussures chauffent comme le lait.",
  "Add nothing. The figures are our own: this milk does not count as pasteurised.":
    "N’ajoutez rien. Les chiffres sont les nôtres\u00a0: ce lait ne compte pas comme pasteurisé.",
  "Add nothing. The figures are those of this recipe: this milk does not count as pasteurised.":
    "N’ajoutez rien. Les chiffres sont ceux de cette recette\u00a0: ce lait ne compte pas comme pasteurisé.",
  "Heat at once. Milk or air space was too cold: the hold starts again from the beginning once both are hot enough. Write it down.":
    "Chauffez tout de suite. Le lait ou l’air sous couvercle était trop froid\u00a0: le maintien repart du début quand les deux sont assez chauds. Notez-le.",
  "A reading that was missed cannot be made up. Write it down and read both thermometers now.":
    "Une mesure manquée ne se rattrape pas. Notez-le et lisez maintenant les deux thermomètres.",

  // What to do now, in one sentence; {names} are figures of the step.
  "Once the drug test is negative, run {target/milk_volume_l} of milk into the tank.":
    "Si le test d’antibiotiques est négatif, faites entrer {target/milk_volume_l} de lait dans le tank.",
  "Pump the milk into the clean vat; start the stirrer once covered.":
    "Pompez le lait dans la cuve propre\u00a0; lancez le brasseur une fois couvert.",
  "Keep the milk at {target/milk_temp_c} overnight, with the lid shut.":
    "Gardez le lait à {target/milk_temp_c} toute la nuit, couvercle fermé.",
  "Heat the milk to {end/at_least} and the air space to {target/air_space_temp_c}, stirring.":
    "Chauffez le lait à {end/at_least} et l’air sous couvercle à {target/air_space_temp_c}, en brassant.",
  "Heat the milk to {end/at_least}, with lid shut and stirrer on.":
    "Chauffez le lait à {end/at_least}, couvercle fermé et brasseur en marche.",
  "Warm the milk to {end/at_least}; stop the warm water a little before.":
    "Tiédissez le lait à {end/at_least}\u00a0; arrêtez l’eau tiède un peu avant.",
  "Hold the milk at {target/milk_temp_c} for {lasts}, lid shut and stirrer on.":
    "Maintenez le lait à {target/milk_temp_c} pendant {lasts}, couvercle fermé et brasseur en marche.",
  "Mark the end of the hold on the chart and write both thermometers beside it.":
    "Marquez la fin du maintien sur le diagramme et notez à côté les deux thermomètres.",
  "Turn the fans on and drain the hot water from the jacket.":
    "Allumez les ventilateurs et videz l’eau chaude de la double enveloppe.",
  "Cool the milk to {end/at_most}; stop the cold water a little before.":
    "Refroidissez le lait à {end/at_most}\u00a0; arrêtez l’eau froide un peu avant.",
  "Lock out the drive, then fit the clean knives and stirrers.":
    "Cadenassez le moteur, puis montez les couteaux et les brasseurs propres.",
  "Scatter {dose/starter} of starter over the milk, with the stirrer slow.":
    "Répandez {dose/starter} de ferment sur le lait, brasseur au ralenti.",
  "Stir the starter slowly into the milk.": "Mélangez doucement le ferment au lait.",
  "Stir in {dose/calcium_chloride} of calcium chloride, well diluted.":
    "Incorporez {dose/calcium_chloride} de chlorure de calcium, bien dilué.",
  "Stir slowly while the starter wakes; read the pH before the rennet.":
    "Brassez doucement pendant que le ferment s’éveille\u00a0; lisez le pH avant la présure.",
  "Dilute {dose/rennet} of rennet in 10 times as much cool water and pour it in.":
    "Diluez {dose/rennet} de présure dans 10 fois plus d’eau fraîche et versez.",
  "Stir for 2 minutes, then stop the stirrer and let the milk stand.":
    "Brassez 2 minutes, puis arrêtez le brasseur et laissez le lait immobile.",
  "Keep the vat still; watch for the first flakes, then for a clean break.":
    "Laissez la cuve immobile\u00a0; guettez les premiers flocons, puis la cassure nette.",
  "Cut slowly at first, then faster, until the pieces are even.":
    "Décaillez d’abord lentement, puis plus vite, jusqu’à des grains réguliers.",
  "Heat water for both washes to {end/at_least}: a quarter of the milk's volume.":
    "Chauffez l’eau des deux lavages à {end/at_least}\u00a0: le quart du volume de lait.",
  "Let the curd rest until the cut faces shine and hold together.":
    "Laissez reposer le caillé jusqu’à ce que les faces brillent et tiennent.",
  "Draw off {target/whey_drained_l} of whey through strainer and net.":
    "Soutirez {target/whey_drained_l} de petit-lait à travers crépine et filet.",
  "Pour {pour/water_added_l} of water at {pour/water_temp_c}; stop when the curd reaches {end/at_least}.":
    "Versez {pour/water_added_l} d’eau à {pour/water_temp_c}\u00a0; arrêtez quand le caillé atteint {end/at_least}.",
  "Stop the water once the curd reaches {end/at_least}.":
    "Arrêtez l’eau dès que le caillé atteint {end/at_least}.",
  "Stop the stirrer, lift it clear and let the curd sink.":
    "Arrêtez le brasseur, relevez-le et laissez le caillé descendre.",
  "Draw off about {target/whey_drained_l} of whey, until you see the curd.":
    "Soutirez environ {target/whey_drained_l} de petit-lait, jusqu’à voir le caillé.",
  "Stir at {target/curd_temp_c} until the pieces are springy and do not stick.":
    "Brassez à {target/curd_temp_c} jusqu’à des grains souples qui ne collent pas.",
  "Move curd and whey to the warm table without breaking the curd.":
    "Passez caillé et petit-lait sur la table tiède sans briser le caillé.",
  "Lay plates under the whey and set {target/bed_load_kg} of weights evenly.":
    "Posez les plaques sous le petit-lait et répartissez {target/bed_load_kg} de poids.",
  "Lay plates on the bed, under the whey, and set the weights evenly.":
    "Posez des plaques sur le gâteau, sous le petit-lait, et répartissez les poids.",
  "Leave {target/bed_load_kg} of weights on; let the whey run off at the end.":
    "Laissez {target/bed_load_kg} de poids\u00a0; laissez couler le petit-lait à la fin.",
  "Leave the weights on; let the whey run off at the end.":
    "Laissez les poids\u00a0; laissez couler le petit-lait à la fin.",
  "Lift the weights off one at a time; see whether the bed has knitted.":
    "Ôtez les poids un par un\u00a0; regardez si le gâteau est soudé.",
  "Mark small and large blocks, cut straight down and weigh one of each.":
    "Marquez petits et grands blocs, coupez droit et pesez-en un de chaque.",
  "Put a block in each mould, with its mark, cloth and lid.":
    "Mettez un bloc dans chaque moule, avec sa marque, sa toile et son foncet.",
  "Press the small wheels at {target/press_gauge_kpa/small}, the large at {target/press_gauge_kpa/large}.":
    "Pressez les petites meules à {target/press_gauge_kpa/small}, les grandes à {target/press_gauge_kpa/large}.",
  "Press the wheels at {target/press_gauge_kpa/small} and write down the gauge.":
    "Pressez les meules à {target/press_gauge_kpa/small} et notez le manomètre.",
  "Press the wheels at {target/press_gauge_kpa/large} and write down the gauge.":
    "Pressez les meules à {target/press_gauge_kpa/large} et notez le manomètre.",
  "Stack the moulds straight, press lightly and write down the gauge.":
    "Empilez les moules bien droits, pressez légèrement et notez le manomètre.",
  "Let the pressure off, turn each wheel and smooth its cloth.":
    "Relâchez la pression, retournez chaque meule et lissez sa toile.",
  "Let the pressure off, measure the pH of one wheel and turn them all.":
    "Relâchez la pression, mesurez le pH d’une meule et retournez-les toutes.",
  "Let the pressure off, take the wheels out, trim and weigh them.":
    "Relâchez la pression, démoulez les meules, ébarbez-les et pesez-les.",
  "Keep the small wheels in brine of {target/brine_salt_frac} at {target/brine_temp_c}; turn them daily.":
    "Gardez les petites meules en saumure à {target/brine_salt_frac}, à {target/brine_temp_c}\u00a0; retournez-les chaque jour.",
  "Keep the large wheels in brine of {target/brine_salt_frac} at {target/brine_temp_c}; turn them daily.":
    "Gardez les grandes meules en saumure à {target/brine_salt_frac}, à {target/brine_temp_c}\u00a0; retournez-les chaque jour.",
  "Turn the wheels once a day until the rind is dry to the touch.":
    "Retournez les meules chaque jour jusqu’à ce que la croûte soit sèche au toucher.",
  "Brush a thin, even coat on top and edge; let it dry.":
    "Passez une couche fine d’enduit sur le dessus et le talon\u00a0; laissez sécher.",
  "Turn the wheels and coat the other side and the edge; let it dry.":
    "Retournez les meules, passez l’enduit sur l’autre face et le talon\u00a0; laissez sécher.",
  "Dip one side, let it set, then dip the other until none is bare.":
    "Trempez une face, laissez figer, puis l’autre, sans laisser de vide.",
  "Keep the store at {target/store_temp_c} and {target/store_humidity_frac} damp; turn and wipe the wheels.":
    "Tenez la cave à {target/store_temp_c} et {target/store_humidity_frac} d’humidité\u00a0; retournez et essuyez les meules.",
};
