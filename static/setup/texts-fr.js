export const TEXTS = {
  "page.title": "Préparer ce téléphone",
  "page.language": "Langue",
  "page.device": "Quel téléphone est-ce\u00a0?",
  "page.iphone": "iPhone ou iPad",
  "page.android": "Android",
  "page.back": "Retour",
  "page.again": "Vérifier à nouveau",
  "page.browser_iphone":
    "Ouvrez cette page dans Safari\u00a0: seul Safari peut prendre le profil.",
  "page.browser_android":
    "Ouvrez cette page dans Chrome\u00a0: ce navigateur n’utilise pas vos propres certificats.",

  "asking.title": "Un instant",
  "asking.lead": "On regarde si ce téléphone fait déjà confiance au serveur.",

  "which.title": "Quel téléphone est-ce\u00a0?",
  "which.lead": "La préparation prend environ trois minutes. Les mains sèches.",
  "which.computer": "Un ordinateur",
  "which.computer_how":
    "Prenez le certificat et importez-le dans les réglages du navigateur, sous «\u00a0Certificats\u00a0», comme autorité pour les sites web. Puis vérifiez à nouveau.",

  "take.android": "1. Prendre le certificat",
  "take.iphone": "1. Prendre le profil",
  "take.only":
    "Seulement sur le réseau de votre propre fromagerie, et seulement si ces signes sont les mêmes sur l’écran du serveur\u00a0:",
  "take.allow":
    "Le téléphone demande. Touchez «\u00a0Autoriser\u00a0», puis «\u00a0Fermer\u00a0».",
  "take.allow_button": "Autoriser",
  "take.go": "Les mêmes\u00a0: prendre",
  "take.have": "Je l’ai. Suivant",
  "take.differ": "D’autres signes\u00a0? Arrêtez, et prévenez qui tient le serveur.",

  "about.title": "Qu’est-ce que cela fait à mon téléphone\u00a0?",
  "about.what":
    "Le téléphone reconnaît avec certitude le serveur de la fromagerie. C’est ainsi que l’application s’ouvre sans réseau.",
  "about.limit":
    "C’est limité aux noms de cette salle et aux adresses d’un réseau local. Cela ne vaut pour aucun site d’internet.",
  "about.key":
    "Qui s’empare de la clé du serveur pourrait se faire passer pour lui sur un réseau local. Retirez-le du téléphone quand vous ne travaillez plus ici.",
  "about.notice_android":
    "Android affiche dès lors que le réseau est peut-être surveillé. Il le fait pour tout certificat de ce genre.",
  "about.remove_android":
    "Pour le retirer\u00a0: Paramètres, cherchez «\u00a0Identifiants utilisateur\u00a0», touchez Vatside, «\u00a0Supprimer\u00a0».",
  "about.remove_iphone":
    "Pour le retirer\u00a0: Réglages, Général, VPN et gestion de l’appareil, Vatside, «\u00a0Supprimer le profil\u00a0».",

  "android.title": "2. L’installer dans Paramètres",
  "android.search":
    "Ouvrez les Paramètres du téléphone. Touchez la recherche et tapez «\u00a0certificat CA\u00a0».",
  "android.search_typed": "certificat CA",
  "android.found": "Touchez «\u00a0Certificat CA\u00a0».",
  "android.anyway":
    "Le téléphone avertit. Touchez «\u00a0Installer quand même\u00a0». S’il demande votre code, tapez-le.",
  "android.anyway_button": "Installer quand même",
  "android.cancel_button": "Ne pas installer",
  "android.file": "Touchez le fichier «\u00a0vatside-root.crt\u00a0».",
  "android.back": "Revenez à cette page. Elle continue toute seule.",
  "android.other_way":
    "Pas de recherche\u00a0? Paramètres, Sécurité et confidentialité, Plus de paramètres de sécurité, Chiffrement et identifiants, Installer un certificat, Certificat CA.",

  "iphone.title": "2. Installer le profil",
  "iphone.settings":
    "Ouvrez les Réglages du téléphone. En haut, touchez «\u00a0Profil téléchargé\u00a0».",
  "iphone.settings_row": "Profil téléchargé",
  "iphone.install":
    "Touchez «\u00a0Installer\u00a0» en haut à droite. Tapez le code du téléphone. Touchez «\u00a0Installer\u00a0» deux fois encore, puis «\u00a0OK\u00a0».",
  "iphone.install_button": "Installer",
  "iphone.no_row":
    "Pas de telle ligne\u00a0? Réglages, Général, VPN et gestion de l’appareil.",
  "iphone.done": "Fait. Suivant",
  "trust.title": "3. Activer la confiance",
  "trust.about":
    "Dans Réglages\u00a0: Général, Informations, et tout en bas «\u00a0Réglages des certificats\u00a0».",
  "trust.about_row": "Réglages des certificats",
  "trust.switch": "Activez Vatside. Touchez «\u00a0Continuer\u00a0».",
  "trust.back": "Revenez à cette page. Elle continue toute seule.",

  notyet:
    "Ce téléphone ne fait pas encore confiance au serveur. Reprenez chaque étape.",

  "open.title": "Ce téléphone fait confiance au serveur",
  "open.lead": "Continuez\u00a0: vérifiez le téléphone et rejoignez.",
  "open.go": "Continuer",
  "open.going": "On continue\u00a0…",

  "lost.title": "Le téléphone ne trouve pas l’adresse sûre du serveur",
  "lost.lead": "Aucune de celles-ci ne répond\u00a0:",
  "lost.wifi":
    "Le téléphone est-il sur le Wi-Fi de la fromagerie\u00a0? Coupez les données mobiles et tout VPN.",
  "lost.dns":
    "Sur Android\u00a0: dans Paramètres, cherchez «\u00a0DNS privé\u00a0» et désactivez-le.",
  "lost.ask":
    "Sinon prévenez qui tient le serveur. Son adresse a peut-être changé\u00a0: scannez à nouveau le code de son écran.",

  "silent.title": "Le serveur ne répond pas",
  "silent.wifi":
    "Le téléphone est-il sur le Wi-Fi de la fromagerie\u00a0? Quand le Wi-Fi est faible, un téléphone passe seul aux données mobiles.",
  "silent.server": "Le serveur est-il allumé\u00a0?",

  "clock.title": "Les horloges diffèrent",
  "clock.phone": "Ce téléphone",
  "clock.server": "Le serveur",
  "clock.why":
    "Avec une horloge fausse, le téléphone croit que le certificat n’est «\u00a0pas encore valable\u00a0» ou qu’il est périmé.",
  "clock.how_android":
    "C’est le téléphone\u00a0? Paramètres, cherchez «\u00a0Date et heure\u00a0», activez l’heure automatique.",
  "clock.how_iphone":
    "C’est le téléphone\u00a0? Réglages, Général, Date et heure, activez «\u00a0Réglage automatique\u00a0».",
  "clock.other":
    "C’est le serveur\u00a0? Mettez le serveur à l’heure. Puis redémarrez-le.",
  "clock.skip": "Continuer quand même",

  "state.good": "Bon",
  "state.bad": "À faire",
  "state.wait": "On regarde",
  "state.try": "Essayez",

  "check.title": "Vérifier ce téléphone",
  "check.all_good": "Tout est prêt.",
  "check.not_all":
    "Vous pouvez rejoindre maintenant. Voyez ce qui est «\u00a0À faire\u00a0» quand vous aurez le temps.",

  secure: "Adresse sûre",
  "secure.good": "Cette adresse est sûre.",
  "secure.bad":
    "Ouvrez l’adresse https du serveur. À celle-ci, rien n’est gardé pour quand le réseau manque.",
  worker: "S’ouvre sans réseau",
  "worker.good": "L’application est gardée sur ce téléphone.",
  "worker.wait": "L’application est en train d’être gardée sur ce téléphone.",
  "worker.bad":
    "Ce navigateur ne garde pas l’application. Prenez Safari sur un iPhone, Chrome sur Android, et pas d’onglet privé.",
  kept: "Garde ses données",
  "kept.good": "Le téléphone promet de garder ce que vous saisissez.",
  "kept.wait": "Le téléphone n’a pas encore répondu. S’il demande, autorisez-le.",
  "kept.bad":
    "Pas encore promis. Mettez l’application sur l’écran d’accueil\u00a0: la question y est posée à nouveau.",
  sound: "Son",
  "sound.good": "Vous l’avez entendu.",
  "sound.try": "Montez le volume et jouez le son.",
  "sound.asked": "L’avez-vous entendu\u00a0?",
  "sound.bad":
    "Montez le volume, coupez le mode silencieux et ôtez les écouteurs. Puis rejouez-le.",
  "sound.none":
    "Ce navigateur ne fait pas de son. Prenez un autre téléphone pour les alarmes.",
  "sound.play": "Jouer le son",
  "sound.yes": "Entendu",
  "sound.no": "Rien entendu",
  clock: "Horloge",
  "clock.good": "La même que celle du serveur.",
  "clock.wait": "On demande au serveur.",
  "clock.bad":
    "{minutes} min d’écart. Mettez l’heure automatique. Les saisies sont corrigées malgré tout.",
  "clock.unknown":
    "Le serveur ne l’a pas dit. Le téléphone est-il sur le Wi-Fi de la fromagerie\u00a0?",
  alarms: "Alarmes",
  "alarms.good":
    "Elles peuvent venir sur ce téléphone, avec internet. Activez-les dans l’application, sous Alarmes.",
  "alarms.not_installed":
    "Sur un iPhone, seule l’application de l’écran d’accueil les reçoit. Mettez-la d’abord là.",
  "alarms.denied":
    "Refusées dans les réglages du téléphone pour ce site. Autorisez-y les notifications, ou prenez le fichier d’agenda sous Alarmes.",
  "alarms.none":
    "Ce navigateur n’en reçoit pas. Dans l’application, sous Alarmes, un fichier d’agenda fait sonner l’agenda du téléphone.",

  "home.title": "D’abord sur l’écran d’accueil",
  "home.why":
    "Sur un iPhone, l’application de l’écran d’accueil garde ses propres données. Rejoignez donc là-bas, pas ici.",
  "home.share": "Touchez «\u00a0Partager\u00a0».",
  "home.add":
    "Touchez «\u00a0Sur l’écran d’accueil\u00a0», puis «\u00a0Ajouter\u00a0».",
  "home.add_row": "Sur l’écran d’accueil",
  "home.open":
    "Ouvrez Vatside depuis l’écran d’accueil. Tapez ou collez-y le code\u00a0:",
  "home.copy": "Copier le code",
  "home.copied": "Copié",
  "home.ask_code": "Demandez un code au responsable.",
  "home.here": "Rejoindre ici dans le navigateur quand même",

  "join.title": "Rejoindre la fromagerie",
  "join.code": "Le code",
  "join.code_hint": "De l’écran du responsable, ou là où le serveur a été lancé",
  "join.name": "Votre nom",
  "join.name_hint": "Pour le premier téléphone du responsable",
  "join.device": "Nom de ce téléphone",
  "join.device_hint": "Par exemple\u00a0: salle des cuves",
  "join.iphone": "iPhone",
  "join.android": "Téléphone Android",
  "join.go": "Associer",
  "join.joining": "On associe\u00a0…",
  "joined.title": "Ce téléphone a déjà rejoint",
  "joined.as": "Il est à {name}.",
  "joined.go": "À l’application",

  "error.code_missing": "Tapez le code.",
  "error.wrong_code":
    "Ce code est faux, déjà utilisé ou trop vieux. Demandez-en un autre.",
  "error.too_many_tries": "Trop de codes faux. Attendez {seconds} secondes.",
  "error.person_missing": "Tapez votre nom\u00a0: ce code fait de vous le responsable.",
  "error.inactive_person":
    "Cette personne a quitté la fromagerie. Demandez au responsable.",
  "error.device_in_use":
    "Ce téléphone est à quelqu’un d’autre. Le responsable peut le retirer sous Équipe.",
  "error.unreachable":
    "Le serveur est injoignable. Le téléphone est-il sur le Wi-Fi de la fromagerie\u00a0?",
  "error.other": "Cela n’a pas marché. Réessayez.",
};
