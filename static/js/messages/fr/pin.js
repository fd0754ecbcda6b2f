// PINs and proofs in French: the keys of en/pin.js, in its order.

export const PIN = {
  "nav.pin": "Code PIN",
  "nav_detail.pin": "Pour signer et pour bloquer",
  "pin.opening": "Un instant…",
  "pin.missing":
    "Le clavier du code PIN n’est pas encore sur ce téléphone. Ouvrez-le une fois là où le serveur répond.",
  "pin.of": "Code PIN de {name}",
  "pin.enter": "Code PIN de {name}",
  "pin.choose":
    "{name} n’a pas encore de code PIN. Choisissez de 4 à 8 chiffres\u00a0; plus il y en a, moins on le devine. Il sert à signer et à débloquer\u00a0; personne ne peut le lire.",
  "pin.again": "Les mêmes chiffres encore une fois.",
  "pin.before": "Le code PIN actuel de {name}.",
  "pin.next": "Suivant",
  "pin.keep": "Garder ce code PIN",
  "pin.done":
    "Le code PIN est en place. Les autres téléphones l’apprendront dès qu’ils joindront le serveur.",
  "pin.differs": "Ce n’étaient pas les mêmes chiffres. Choisissez encore une fois.",
  "pin.forgotten":
    "Oublié\u00a0? Le responsable le réinitialise sous Équipe\u00a0; celui d’un responsable, un autre responsable, ou le boîtier avec la commande vatside reset-pin.",
  "pin.checking": "Vérification…",
  "pin.digits.one": "1 chiffre saisi",
  "pin.digits.many": "{n} chiffres saisis",
  "pin.peek": "Montrer les chiffres",
  "pin.wrong.one": "Code PIN faux. Encore 1 essai avant une attente.",
  "pin.wrong.many": "Code PIN faux. Encore {n} essais avant une attente.",
  "pin.wait": "Trop de codes PIN faux. Attendez {span}.",
  "pin.locked":
    "Dix codes PIN faux sur ce téléphone. Désormais, c’est le serveur qui les vérifie\u00a0: allez là où il répond, ou demandez au responsable de réinitialiser le code.",
  "pin.no_server":
    "Le serveur ne répond pas, et il le faut une fois. Rien n’est perdu\u00a0: cela peut se faire plus tard.",
  "pin.not_here":
    "{name} n’a pas encore de code PIN. Choisissez-le sur le téléphone de {name}, sous Qui\u00a0; ou que le responsable le permette ici une demi-heure, sous Équipe.",
  "pin.plain":
    "À cette adresse, d’autres sur le réseau pourraient lire le code PIN. L’adresse https le garde secret.",
  "pin.hurry": "Bloquer tout de suite, sans code",
  "pin.hurry_detail":
    "Sans lui\u00a0: noté pour {name}, à qui est ce téléphone, et marqué comme non prouvé.",
  "proved.pin": "Prouvé par code PIN",
  "proved.phone": "Non prouvé par code PIN\u00a0; noté sur le téléphone de la personne",
  "proved.none": "Non prouvé\u00a0; noté avant les codes PIN",
  "proved.old_pin": "Signé avec un code PIN qui avait changé",
  "proved.accepted": "Non prouvé\u00a0; admis après examen",
  "people.pin": "Laisser choisir un autre code PIN",
  "people.pin_detail": "Le code actuel ne vaut plus",
  "people.pin_until":
    "{name} peut choisir un code PIN sur n’importe quel téléphone jusqu’à {at}.",
  "field.pin": "Le code PIN",
  "field.proof": "La preuve",
  "problem.pin_not_digits": "Un code PIN n’a que des chiffres.",
  "problem.pin_too_short": "Un code PIN a au moins {limit} chiffres.",
  "problem.pin_too_long": "Un code PIN a au plus {limit} chiffres.",
  "problem.pin_too_easy":
    "Ce code PIN est parmi les premiers que l’on essaie. Choisissez-en un autre.",
  "problem.not_proved": "La saisie est arrivée sans le code PIN de la personne.",
  "problem.bad_proof":
    "La preuve ne correspond pas\u00a0: la saisie a été changée, ou une autre personne a signé.",
  "problem.old_pin":
    "Signé avec un code PIN qui avait changé. Signez encore une fois avec le nouveau.",
  "problem.unknown_pin":
    "Le serveur ne connaît pas le code PIN qui a signé. Choisissez-en un de nouveau et signez encore une fois.",
  "error.wrong_pin": "Le code PIN est faux.",
  "error.no_pin": "Cette personne n’a pas encore de code PIN.",
  "error.no_pin_for_role": "Seuls les fromagers et les responsables ont un code PIN.",
  "error.pin_not_here":
    "Choisissez-le sur le téléphone de cette personne, ou que le responsable le permette sous Équipe.",
  "error.own_pin":
    "Un autre responsable le réinitialise, ou le boîtier avec la commande vatside reset-pin.",
  "error.too_many_pins": "Trop de codes PIN faux. Attendez un peu.",
  "error.not_a_key": "Le téléphone a fait une clé inutilisable. Essayez encore.",
};
