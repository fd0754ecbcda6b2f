// en/certificate.js, in its order.

export const CERTIFICATE = {
  "certificate.title": "https dans la fromagerie",
  "certificate.ends_soon":
    "Le certificat du serveur prend fin le {day} et n’a pas été renouvelé. Passé ce jour, les téléphones ne l’atteignent plus. Sur la machine, lancez\u00a0: vatside tls",
  "certificate.root_key_away":
    "Le certificat du serveur prend fin le {day}\u00a0; le renouveler demande la clé de la racine que vous gardez ailleurs. Sur la machine, lancez\u00a0: vatside tls --root-key FILE",
  "certificate.address_changed":
    "L’adresse de la machine a changé. Les téléphones qui ouvrent l’ancienne n’y trouvent personne. Donnez à la machine une adresse fixe dans le routeur.",
  "certificate.address_lacking":
    "La machine a une adresse qui manque à son certificat. Apportez la clé de la racine et lancez sur la machine\u00a0: vatside tls --root-key FILE",
  "certificate.root_ends_soon":
    "La racine de la fromagerie prend fin dans moins de six mois. Choisissez un jour calme, lancez sur la machine\u00a0: vatside tls --new-root, puis faites prendre la nouvelle racine à chaque téléphone depuis la page de mise en service.",
  "certificate.clock_wrong":
    "L’horloge de la machine est fausse. Réglez-la\u00a0: les téléphones croient son certificat terminé ou pas encore commencé.",
  "certificate.other":
    "Le certificat du serveur demande votre attention. Sur la machine, lancez\u00a0: vatside check",
};
