// What alarms say in French, and how each way of ringing stands.

export const ALARM = {
  "nav.alarms": "Alarmes",
  "nav.wall": "Écran mural",
  "nav_detail.alarms": "Ce qui sonne, et si cela peut sonner ici",
  "nav_detail.wall": "L’écran de la salle, avec la sonnerie de la salle",

  "kind.alarm_shelved": "alarme mise de côté",
  "line.alarm_shelved": "Alarme mise de côté\u00a0: {why}",
  "said.alarm_shelved": "Alarme mise de côté pour {span}",
  "field.for_s": "Durée",
  "field.escalate_min": "Minutes",

  "alarm.timer": "Minuteur «\u00a0{label}\u00a0»\u00a0: c’est l’heure.",
  "alarm.step_due": "«\u00a0{step}\u00a0»\u00a0: c’est l’heure.",
  "alarm.step_late": "«\u00a0{step}\u00a0» est en retard.",
  "alarm.reading_overdue": "{what}\u00a0: mesure en retard dans «\u00a0{step}\u00a0».",
  "alarm.readings_overdue": "{n} mesures en retard dans «\u00a0{step}\u00a0».",
  "alarm.since": "depuis {age}",
  "alarm.found_late": "(vue {by} après le début\u00a0: cet écran dormait)",
  "alarm.silence": "Silence",
  "alarm.more.one": "1 autre",
  "alarm.more.many": "{n} autres",
  "alarm.none": "Aucune alarme.",
  "alarm.ahead": "Ce qui sonne ensuite",
  "alarm.other_vat": "Autre cuve\u00a0: {whose}",
  "alarm.other_make": "Autre fabrication\u00a0: {whose}",
  "alarm.no_shift": "muet ici\u00a0: aucun poste commencé",
  "alarm.sound_off": "Le son n’est pas encore débloqué.",
  "alarm.sound_interrupted": "Le téléphone a coupé le son. Touchez l’écran.",
  "alarm.sound_none": "Ce navigateur ne peut pas faire de son.",
  "alarm.not_on_wall.one":
    "1 échéance n’est pas encore sur l’écran mural\u00a0: le serveur ne la connaît pas.",
  "alarm.not_on_wall.many":
    "{n} échéances ne sont pas encore sur l’écran mural\u00a0: le serveur ne les connaît pas.",
  "alarm.state_unacknowledged": "SONNE",
  "alarm.state_acknowledged": "COUPÉE",
  "alarm.state_shelved": "DE CÔTÉ",
  "alarm.state_returned": "FINIE",
  "alarm.waits": "Personne n’a répondu. À partir de {at}, c’est pour le responsable.",
  "alarm.escalated":
    "Personne n’a répondu\u00a0: depuis {at}, c’est pour le responsable.",
  "alarm.silenced_by": "Coupée par {name} à {at}",
  "alarm.shelved_by": "Mise de côté par {name}, fin {until}\u00a0: {why}",
  "alarm.returned": "Elle a fini à {at} et personne ne l’avait coupée.",
  "alarm.shelve": "Mettre de côté",
  "alarm.shelve_for": "Mettre de côté {span}",
  "alarm.shelve_lead":
    "Elle reste dans la liste sans sonner, et revient toute seule. Un poste au plus.",
  "alarm.unshelve": "Réactiver",
  "alarm.how_long": "Pour combien de temps\u00a0?",
  "alarm.why": "Pourquoi\u00a0?",

  "rung.title": "Où cela peut sonner",
  "rung.lead": "Aucun moyen seul ne suffit. Armez-en autant que possible.",
  "rung.armed": "ARMÉ",
  "rung.not_armed": "PAS ARMÉ",
  "rung.unknown": "Le serveur n’a pas répondu\u00a0: on ne sait pas.",
  "rung.phone": "Cet écran, tant qu’il est devant",
  "rung.phone_off": "Aucun poste n’est commencé ici\u00a0: il reste muet.",
  "rung.phone_unheard":
    "L’alarme d’essai n’a pas été entendue. Montez le son et refaites l’essai.",
  "rung.phone_on":
    "Essai entendu à {at}. Un téléphone verrouillé, ou avec une autre appli devant, reste muet.",
  "rung.phone_awake": "L’écran reste allumé.",
  "rung.phone_sleeps": "Le téléphone ne promet pas de garder l’écran allumé.",
  "rung.start": "Début de poste",
  "rung.end": "Fin de poste",
  "rung.test": "Alarme d’essai",
  "rung.do_you_hear": "Elle sonne. L’entendez-vous là où vous travaillez\u00a0?",
  "rung.heard": "Je l’entends",
  "rung.not_heard": "Je n’entends rien",
  "rung.wall": "L’écran mural de la salle",
  "rung.wall_on": "«\u00a0{name}\u00a0» peut sonner\u00a0; dernier signe il y a {age}.",
  "rung.wall_mute":
    "«\u00a0{name}\u00a0» marche, mais le son est bloqué. Touchez-le une fois.",
  "rung.wall_silent": "«\u00a0{name}\u00a0»\u00a0: dernier signe il y a {age}.",
  "rung.wall_none":
    "Aucun appareil ne sert d’écran mural. Ouvrez-le sur un appareil branché.",
  "rung.wall_here": "Écran mural ici",
  "rung.push": "Une notification sur ce téléphone",
  "rung.calendar": "L’agenda de ce téléphone",
  "rung.calendar_how":
    "Sonne sur un téléphone verrouillé et sans réseau. Ouvrez le fichier une fois par fabrication\u00a0; d’ici, on ne voit pas si votre agenda l’a gardé.",
  "rung.calendar_offline": "Le fichier vient du serveur, qui ne répond pas.",
  "rung.calendar_open": "Longues échéances de {name}",
  "rung.calendar_step": "Cette étape dans l’agenda",
  "rung.calendar_make": "Longues échéances dans l’agenda",
  "rung.calendar_detail": "Sonne sur un téléphone verrouillé, sans réseau",
  "rung.owner": "Avis au responsable",
  "rung.owner_after":
    "Ce que personne ne coupe pendant {min}\u00a0min est envoyé au responsable.",
  "rung.owner_on": "Un téléphone du responsable reçoit les notifications.",
  "rung.owner_off": "Aucun téléphone du responsable ne reçoit les notifications.",
  "rung.owner_set": "Avertir le responsable après",
  "rung.minutes": "{min}\u00a0min",

  "push.unknown": "Pas encore regardé.",
  "push.not_secure":
    "Les notifications demandent https\u00a0; cette adresse ne l’a pas.",
  "push.no_support": "Ce navigateur ne reçoit pas de notifications ici.",
  "push.not_installed":
    "Mettez d’abord Vatside sur l’écran d’accueil\u00a0; un iPhone ne reçoit les notifications que là.",
  "push.not_asked": "Pas encore demandé.",
  "push.denied": "Coupées dans les réglages du téléphone pour cette appli.",
  "push.no_subscription": "Ce téléphone n’est pas abonné.",
  "push.not_posted": "Le serveur ne connaît pas l’abonnement de ce téléphone.",
  "push.no_contact":
    "Le serveur n’a pas d’adresse de contact pour les notifications\u00a0; la personne qui le gère doit en mettre une.",
  "push.contact_unusable":
    "L’adresse de contact du serveur pour les notifications ne peut pas être vraie\u00a0; la personne qui le gère doit la changer.",
  "push.dropped":
    "Le service de notifications a fini l’abonnement ({status}). Activez-les de nouveau.",
  "push.no_sender": "Le serveur n’envoie rien en ce moment.",
  "push.never": "Aucune notification reçue. Envoyez un essai.",
  "push.failed":
    "La dernière notification a été refusée ({status}\u00a0; 0 veut dire pas de réponse).",
  "push.on_all":
    "Toutes les alarmes arrivent ici. La dernière est partie il y a {age}.",
  "push.on_unanswered":
    "Ce qui reste sans réponse arrive ici. La dernière est partie il y a {age}.",
  "push.turn_on": "Toutes les alarmes ici",
  "push.turn_on_unanswered": "Seulement sans réponse",
  "push.turn_off": "Aucune notification ici",
  "push.test": "Envoyer un essai",
  "push.test_sent":
    "Le service de notifications a pris l’essai. Il doit s’afficher sur ce téléphone.",
  "push.arrived": "La notification d’essai est arrivée sur ce téléphone.",

  "wall.unlock": "Touchez une fois pour permettre la sonnerie",
  "wall.fresh": "EN DIRECT",
  "wall.stale": "PAS À JOUR\u00a0: le serveur est muet",
  "wall.no_deadline": "Aucune échéance",
  "wall.sound_ready": "Son actif",
  "wall.sound_off": "Son bloqué",
  "wall.sound_interrupted": "Son coupé",
  "wall.sound_none": "Pas de son dans ce navigateur",

  "error.no_deadline": "Aucune échéance de ce genre à venir.",
  "error.not_a_push_service":
    "Le serveur ne connaît pas le service de notifications de ce navigateur.",
  "error.not_a_push_key": "La clé de notification de ce navigateur a été refusée.",
  "error.no_contact": "Le serveur n’a pas d’adresse de contact pour les notifications.",
  "error.contact_unusable":
    "L’adresse de contact du serveur pour les notifications ne peut pas être vraie.",
  "error.no_subscription": "Ce téléphone ne reçoit pas de notifications.",
};
