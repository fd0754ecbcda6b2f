export const TEXTS = {
  "page.title": "Preparar este teléfono",
  "page.language": "Idioma",
  "page.device": "¿Qué teléfono es?",
  "page.iphone": "iPhone o iPad",
  "page.android": "Android",
  "page.back": "Atrás",
  "page.again": "Comprobar otra vez",
  "page.browser_iphone":
    "Abra esta página en Safari: solo Safari puede tomar el perfil.",
  "page.browser_android":
    "Abra esta página en Chrome: este navegador no usa certificados propios.",

  "asking.title": "Un momento",
  "asking.lead": "Se mira si este teléfono ya confía en el servidor.",

  "which.title": "¿Qué teléfono es?",
  "which.lead": "Prepararlo lleva unos tres minutos. Con las manos secas.",
  "which.computer": "Un ordenador",
  "which.computer_how":
    "Tome el certificado e impórtelo en los ajustes del navegador, en «Certificados», como autoridad para sitios web. Después compruebe otra vez.",

  "take.android": "1. Tomar el certificado",
  "take.iphone": "1. Tomar el perfil",
  "take.only":
    "Solo en la red de su propia quesería, y solo si estos signos son los mismos en la pantalla del servidor:",
  "take.allow": "El teléfono pregunta. Toque «Permitir» y después «Cerrar».",
  "take.allow_button": "Permitir",
  "take.go": "Son iguales: tomarlo",
  "take.have": "Ya lo tengo. Seguir",
  "take.differ": "¿Otros signos? Pare y avise a quien lleva el servidor.",

  "about.title": "¿Qué le hace esto a mi teléfono?",
  "about.what":
    "El teléfono reconoce con certeza el servidor de la quesería. Solo así la aplicación abre sin red.",
  "about.limit":
    "Está limitado a los nombres de esta sala y a direcciones de una red local. No vale para ningún sitio de internet.",
  "about.key":
    "Quien se haga con la clave del servidor podría hacerse pasar por él en una red local. Quítelo del teléfono cuando ya no trabaje aquí.",
  "about.notice_android":
    "Desde entonces Android muestra un aviso de que la red puede estar supervisada. Lo hace con cualquier certificado de este tipo.",
  "about.remove_android":
    "Para quitarlo: Ajustes, busque «Credenciales de usuario», toque Vatside, «Quitar».",
  "about.remove_iphone":
    "Para quitarlo: Ajustes, General, VPN y gestión de dispositivos, Vatside, «Eliminar perfil».",

  "android.title": "2. Instalarlo en Ajustes",
  "android.search":
    "Abra los Ajustes del teléfono. Toque la búsqueda y escriba «certificado de CA».",
  "android.search_typed": "certificado de CA",
  "android.found": "Toque «Certificado de CA».",
  "android.anyway":
    "El teléfono avisa. Toque «Instalar de todos modos». Si pide su PIN, escríbalo.",
  "android.anyway_button": "Instalar de todos modos",
  "android.cancel_button": "No instalar",
  "android.file": "Toque el archivo «vatside-root.crt».",
  "android.back": "Vuelva a esta página. Sigue sola.",
  "android.other_way":
    "¿No hay búsqueda? Ajustes, Seguridad y privacidad, Más ajustes de seguridad, Cifrado y credenciales, Instalar un certificado, Certificado de CA.",

  "iphone.title": "2. Instalar el perfil",
  "iphone.settings":
    "Abra los Ajustes del teléfono. Arriba, toque «Perfil descargado».",
  "iphone.settings_row": "Perfil descargado",
  "iphone.install":
    "Toque «Instalar» arriba a la derecha. Escriba el código del teléfono. Toque «Instalar» dos veces más y después «Aceptar».",
  "iphone.install_button": "Instalar",
  "iphone.no_row":
    "¿No está esa línea? Ajustes, General, VPN y gestión de dispositivos.",
  "iphone.done": "Hecho. Seguir",
  "trust.title": "3. Activar la confianza",
  "trust.about":
    "En Ajustes: General, Información y, abajo del todo, «Ajustes de confianza de certificados».",
  "trust.about_row": "Ajustes de confianza de certificados",
  "trust.switch": "Active Vatside. Toque «Continuar».",
  "trust.back": "Vuelva a esta página. Sigue sola.",

  notyet: "Este teléfono aún no confía en el servidor. Repase cada paso.",

  "open.title": "Este teléfono confía en el servidor",
  "open.lead": "Siga: compruebe el teléfono y únase.",
  "open.go": "Seguir",
  "open.going": "Se sigue …",

  "lost.title": "El teléfono no encuentra la dirección segura del servidor",
  "lost.lead": "Ninguna de estas responde:",
  "lost.wifi":
    "¿Está el teléfono en la Wi-Fi de la quesería? Apague los datos móviles y cualquier VPN.",
  "lost.dns": "En Android: busque «DNS privado» en Ajustes y desactívelo.",
  "lost.ask":
    "Si no, avise a quien lleva el servidor. Quizá cambió su dirección: escanee otra vez el código de su pantalla.",

  "silent.title": "El servidor no responde",
  "silent.wifi":
    "¿Está el teléfono en la Wi-Fi de la quesería? Con Wi-Fi débil un teléfono pasa solo a los datos móviles.",
  "silent.server": "¿Está encendido el servidor?",

  "clock.title": "Los relojes difieren",
  "clock.phone": "Este teléfono",
  "clock.server": "El servidor",
  "clock.why":
    "Con la hora mal puesta, el teléfono cree que el certificado «aún no es válido» o que ya venció.",
  "clock.how_android":
    "¿Va mal el teléfono? Ajustes, busque «Fecha y hora», active la hora automática.",
  "clock.how_iphone":
    "¿Va mal el teléfono? Ajustes, General, Fecha y hora, active «Ajuste automático».",
  "clock.other":
    "¿Va mal el servidor? Ponga en hora el servidor. Después arránquelo otra vez.",
  "clock.skip": "Seguir de todos modos",

  "state.good": "Bien",
  "state.bad": "Por hacer",
  "state.wait": "Mirando",
  "state.try": "Pruebe",

  "check.title": "Comprobar este teléfono",
  "check.all_good": "Todo está listo.",
  "check.not_all": "Ya puede unirse. Lo que está «Por hacer», cuando haya tiempo.",

  secure: "Dirección segura",
  "secure.good": "Esta dirección es segura.",
  "secure.bad":
    "Abra la dirección https del servidor. En esta no se guarda nada para cuando falte la red.",
  worker: "Abre sin red",
  "worker.good": "La aplicación está guardada en este teléfono.",
  "worker.wait": "La aplicación se está guardando en este teléfono.",
  "worker.bad":
    "Este navegador no guarda la aplicación. Use Safari en un iPhone, Chrome en Android, y ninguna pestaña privada.",
  kept: "Guarda sus datos",
  "kept.good": "El teléfono promete guardar lo que usted anota.",
  "kept.wait": "El teléfono aún no lo ha dicho. Si pregunta, permítalo.",
  "kept.bad":
    "Aún no lo promete. Ponga la aplicación en la pantalla de inicio: allí se le pregunta otra vez.",
  sound: "Sonido",
  "sound.good": "Lo oyó.",
  "sound.try": "Suba el volumen y toque el tono.",
  "sound.asked": "¿Lo oyó?",
  "sound.bad":
    "Suba el volumen, quite el modo silencio y los auriculares. Después tóquelo otra vez.",
  "sound.none": "Este navegador no suena. Use otro teléfono para las alarmas.",
  "sound.play": "Tocar el tono",
  "sound.yes": "Lo oí",
  "sound.no": "No oí nada",
  clock: "Reloj",
  "clock.good": "El mismo que el del servidor.",
  "clock.wait": "Se pregunta al servidor.",
  "clock.bad":
    "{minutes} min de diferencia. Ponga la hora automática. Las anotaciones se corrigen igualmente.",
  "clock.unknown":
    "El servidor no lo dijo. ¿Está el teléfono en la Wi-Fi de la quesería?",
  alarms: "Alarmas",
  "alarms.good":
    "Pueden llegar a este teléfono, con internet. Actívelas en la aplicación, en Alarmas.",
  "alarms.not_installed":
    "En un iPhone solo las recibe la aplicación de la pantalla de inicio. Póngala allí primero.",
  "alarms.denied":
    "Rechazadas en los ajustes del teléfono para este sitio. Permita allí las notificaciones, o tome el archivo de calendario en Alarmas.",
  "alarms.none":
    "Este navegador no las recibe. En la aplicación, en Alarmas, un archivo de calendario hace sonar el calendario del teléfono.",

  "home.title": "Primero, a la pantalla de inicio",
  "home.why":
    "En un iPhone la aplicación de la pantalla de inicio guarda sus propios datos. Únase allí, no aquí.",
  "home.share": "Toque «Compartir».",
  "home.add": "Toque «Añadir a pantalla de inicio» y después «Añadir».",
  "home.add_row": "Añadir a pantalla de inicio",
  "home.open":
    "Abra Vatside desde la pantalla de inicio. Escriba o pegue allí el código:",
  "home.copy": "Copiar el código",
  "home.copied": "Copiado",
  "home.ask_code": "Pida un código al dueño.",
  "home.here": "Unirse aquí en el navegador de todos modos",

  "join.title": "Unirse a la quesería",
  "join.code": "Código",
  "join.code_hint": "De la pantalla del dueño, o donde se arrancó el servidor",
  "join.name": "Su nombre",
  "join.name_hint": "Para el primer teléfono del dueño",
  "join.device": "Nombre de este teléfono",
  "join.device_hint": "Por ejemplo: sala de cubas",
  "join.iphone": "iPhone",
  "join.android": "Teléfono Android",
  "join.go": "Unirse",
  "join.joining": "Uniéndose …",
  "joined.title": "Este teléfono ya está unido",
  "joined.as": "Es de {name}.",
  "joined.go": "A la aplicación",

  "error.code_missing": "Escriba el código.",
  "error.wrong_code":
    "Este código es erróneo, ya se usó o es demasiado viejo. Pida otro.",
  "error.too_many_tries": "Demasiados códigos erróneos. Espere {seconds} segundos.",
  "error.person_missing": "Escriba su nombre: este código le hace dueño.",
  "error.inactive_person": "Esta persona ya no está en la quesería. Pregunte al dueño.",
  "error.device_in_use":
    "Este teléfono es de otra persona. El dueño puede quitarlo en Personas.",
  "error.unreachable":
    "No se alcanza el servidor. ¿Está el teléfono en la Wi-Fi de la quesería?",
  "error.other": "No funcionó. Inténtelo otra vez.",
};
