// What cannot be shown in French: the keys of en/apart.js, in its order.

export const APART = {
  "broken.mark": "Pas montrée",
  "broken.name": "{name}, lot {batch}",
  "broken.tank_name": "Bac de saumure {name}",
  "broken.no_name": "Toutes les fabrications",
  "broken.opening":
    "Son ouverture est illisible\u00a0: ses étapes, minuteurs et alarmes manquent.",
  "broken.view":
    "Impossible à montrer\u00a0: ses étapes, minuteurs et alarmes manquent.",
  "broken.alarms":
    "Ses alarmes ne peuvent pas être calculées\u00a0: rien ne sonne pour elle.",
  "broken.due": "Ce qui l’attend manque dans cette liste.",
  "broken.acts": "Ce qui tombe en même temps qu’elle n’est pas dit.",
  "broken.clashes": "Ce qui tombe en même temps n’est pas dit.",
  "broken.tank": "Son compte ne peut pas être calculé.",
  "broken.tank_due": "La sortie de ses meules manque dans cette liste.",
  "broken.start": "Son matériel ne peut pas être proposé à une nouvelle fabrication.",
  "broken.learnt": "Rien n’est appris d’elle pour les autres.",
  "broken.trends": "Elle manque dans les tendances.",
  "broken.since": "Depuis {at}.",
  "broken.newer":
    "Elle a été ouverte avec une version plus récente de l’appli. Prenez ici aussi la nouvelle version.",
  "broken.unsound": "Pourquoi\u00a0: {problems}",
  "broken.fault":
    "Le programme a un défaut ({fault}). Toutes les saisies sont gardées. Prévenez qui s’occupe du serveur.",
  "broken.open": "L’ouvrir",
  "broken.what_now":
    "Continuez à la main, avec un minuteur à vous. Les autres fabrications continuent. Un fromager peut la clore ou l’abandonner.",
  "unread.newer.one":
    "1 saisie d’une version plus récente de l’appli est gardée mais ne peut pas être montrée. Prenez la nouvelle version pour la voir.",
  "unread.newer.many":
    "{n} saisies d’une version plus récente de l’appli sont gardées mais ne peuvent pas être montrées. Prenez la nouvelle version pour les voir.",
  "unread.unsound.one":
    "1 saisie est gardée mais illisible. Le registre dit quand et de qui.",
  "unread.unsound.many":
    "{n} saisies sont gardées mais illisibles. Le registre dit quand et de qui.",
  "line.unread_newer":
    "Saisie d’une version plus récente de l’appli ({kind})\u00a0: gardée, mais impossible à montrer ici",
  "line.unread_unsound": "Saisie illisible ({kind})\u00a0: gardée telle quelle",
};
