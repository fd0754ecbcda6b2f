// What the set-up pages say. Names of buttons stand as phones show them; phones
// of other makers word some of them a little differently.
export const TEXTS = {
  "page.title": "Set up this phone",
  "page.language": "Language",
  "page.device": "Which phone is this?",
  "page.iphone": "iPhone, iPad",
  "page.android": "Android",
  "page.back": "Back",
  "page.again": "Check again",
  "page.browser_iphone": "Open this page in Safari: only Safari can take the profile.",
  "page.browser_android":
    "Open this page in Chrome: this browser does not use certificates of your own.",

  "asking.title": "One moment",
  "asking.lead": "Looking whether this phone trusts the server already.",

  "which.title": "Which phone is this?",
  "which.lead": "Setting up takes about three minutes. Have dry hands.",
  "which.computer": "A computer",
  "which.computer_how":
    'Take the certificate and import it in the browser\'s settings, under "Certificates", as an authority for web sites. Then check again.',

  "take.android": "1. Take the certificate",
  "take.iphone": "1. Take the profile",
  "take.only":
    "Only on your own creamery's network, and only if these signs are the same on the server's screen:",
  "take.allow": 'The phone asks. Tap "Allow", then "Close".',
  "take.allow_button": "Allow",
  "take.go": "Same signs: take it",
  "take.have": "I have it. Next",
  "take.differ": "Other signs? Stop, and tell whoever runs the server.",

  "about.title": "What does this do to my phone?",
  "about.what":
    "It lets this phone know the creamery's server for sure. Only then does the app open with no network.",
  "about.limit":
    "It is limited to this room's names and to addresses within a local network. It does not count for any site on the internet.",
  "about.key":
    "Whoever gets hold of the server's key could pose as it, on a local network. So take it off the phone when you no longer work here.",
  "about.notice_android":
    "Android shows a notice from then on that the network may be monitored. It does so for every certificate of this kind.",
  "about.remove_android":
    'To remove it: Settings, search for "User credentials", tap Vatside, "Remove".',
  "about.remove_iphone":
    'To remove it: Settings, General, VPN & Device Management, Vatside, "Remove Profile".',

  "android.title": "2. Install it in Settings",
  "android.search":
    'Open the phone\'s Settings. Tap the search and type "CA certificate".',
  "android.search_typed": "CA certificate",
  "android.found": 'Tap "CA certificate".',
  "android.anyway":
    'The phone warns. Tap "Install anyway". If it asks for your PIN, type it.',
  "android.anyway_button": "Install anyway",
  "android.cancel_button": "Don't install",
  "android.file": 'Tap the file "vatside-root.crt".',
  "android.back": "Come back to this page. It goes on by itself.",
  "android.other_way":
    "No search? Settings, Security & privacy, More security, Encryption & credentials, Install a certificate, CA certificate.",

  "iphone.title": "2. Install the profile",
  "iphone.settings":
    'Open the phone\'s Settings. At the top, tap "Profile Downloaded".',
  "iphone.settings_row": "Profile Downloaded",
  "iphone.install":
    'Tap "Install" at the top right. Type the phone\'s code. Tap "Install" twice more, then "Done".',
  "iphone.install_button": "Install",
  "iphone.no_row": "No such row? Settings, General, VPN & Device Management.",
  "iphone.done": "Done. Next",
  "trust.title": "3. Switch the trust on",
  "trust.about":
    'In Settings: General, About, and right at the bottom "Certificate Trust Settings".',
  "trust.about_row": "Certificate Trust Settings",
  "trust.switch": 'Switch Vatside on. Tap "Continue".',
  "trust.back": "Come back to this page. It goes on by itself.",

  notyet: "This phone does not trust the server yet. Look at each step once more.",

  "open.title": "This phone trusts the server",
  "open.lead": "Go on: check the phone and join.",
  "open.go": "Go on",
  "open.going": "Going on …",

  "lost.title": "The phone does not find the server's secure address",
  "lost.lead": "None of these answers:",
  "lost.wifi":
    "Is the phone on the creamery's Wi-Fi? Switch off mobile data and any VPN.",
  "lost.dns": 'On Android: in Settings search for "Private DNS" and switch it off.',
  "lost.ask":
    "Else tell whoever runs the server. Its address may have changed: scan the code on its screen again.",

  "silent.title": "The server does not answer",
  "silent.wifi":
    "Is the phone on the creamery's Wi-Fi? A phone changes to mobile data by itself when the Wi-Fi is weak.",
  "silent.server": "Is the server switched on?",

  "clock.title": "The clocks differ",
  "clock.phone": "This phone",
  "clock.server": "The server",
  "clock.why":
    'With a wrong clock a phone takes the certificate for "not yet valid" or for run out.',
  "clock.how_android":
    'Phone wrong? Settings, search for "Date & time", switch "Set time automatically" on.',
  "clock.how_iphone":
    'Phone wrong? Settings, General, Date & Time, switch "Set Automatically" on.',
  "clock.other": "Server wrong? Set the clock of the server. Then start it again.",
  "clock.skip": "Go on all the same",

  "state.good": "Good",
  "state.bad": "To do",
  "state.wait": "Looking",
  "state.try": "Try it",

  "check.title": "Check this phone",
  "check.all_good": "All is ready.",
  "check.not_all": 'You can join now. See to what is "To do" when there is time.',

  secure: "Secure address",
  "secure.good": "This address is secure.",
  "secure.bad":
    "Open the server's https address. At this one nothing is kept for when the network is gone.",
  worker: "Opens with no network",
  "worker.good": "The app is kept on this phone.",
  "worker.wait": "The app is being kept on this phone.",
  "worker.bad":
    "This browser does not keep the app. Use Safari on an iPhone, Chrome on Android, and no private tab.",
  kept: "Keeps its data",
  "kept.good": "The phone promises to keep what you enter.",
  "kept.wait": "The phone has not said yet. If it asks, allow it.",
  "kept.bad":
    "Not promised yet. Put the app on the home screen: there it is asked again.",
  sound: "Sound",
  "sound.good": "You heard it.",
  "sound.try": "Turn the volume up and play the tone.",
  "sound.asked": "Did you hear it?",
  "sound.bad":
    "Turn the volume up, the silent switch off, and any headphones off. Then play it again.",
  "sound.none": "This browser makes no sound. Use another phone for alarms.",
  "sound.play": "Play the tone",
  "sound.yes": "Heard it",
  "sound.no": "Heard nothing",
  clock: "Clock",
  "clock.good": "The same as the server's.",
  "clock.wait": "Asking the server.",
  "clock.bad":
    "{minutes} min off. Set the phone to automatic time. Entries are put right all the same.",
  "clock.unknown": "The server did not say. Is the phone on the creamery's Wi-Fi?",
  alarms: "Alarms",
  "alarms.good":
    "They can come to this phone, with internet. Switch them on in the app, under Alarms.",
  "alarms.not_installed":
    "On an iPhone only the app on the home screen gets them. Put it there first.",
  "alarms.denied":
    "Refused in the phone's settings for this site. Allow notifications there, or take the calendar file under Alarms.",
  "alarms.none":
    "This browser gets none. In the app, under Alarms, a calendar file makes the phone's own calendar ring.",

  "home.title": "First put it on the home screen",
  "home.why":
    "On an iPhone the app on the home screen keeps its own data. So join there, not here.",
  "home.share": 'Tap "Share".',
  "home.add": 'Tap "Add to Home Screen", then "Add".',
  "home.add_row": "Add to Home Screen",
  "home.open": "Open Vatside from the home screen. Type or paste the code there:",
  "home.copy": "Copy the code",
  "home.copied": "Copied",
  "home.ask_code": "Ask the owner for a code.",
  "home.here": "Join here in the browser all the same",

  "join.title": "Join the creamery",
  "join.code": "Code",
  "join.code_hint": "From the owner's screen, or where the server was started",
  "join.name": "Your name",
  "join.name_hint": "For the owner's first phone",
  "join.device": "Name of this phone",
  "join.device_hint": "For example: vat room",
  "join.iphone": "iPhone",
  "join.android": "Android phone",
  "join.go": "Join",
  "join.joining": "Joining …",
  "joined.title": "This phone has joined",
  "joined.as": "It belongs to {name}.",
  "joined.go": "To the app",

  "error.code_missing": "Type the code.",
  "error.wrong_code": "This code is wrong, used up or too old. Ask for a new one.",
  "error.too_many_tries": "Too many wrong codes. Wait {seconds} seconds.",
  "error.person_missing": "Type your name: this code makes you the owner.",
  "error.inactive_person": "This person has left the creamery. Ask the owner.",
  "error.device_in_use":
    "This phone belongs to somebody else. The owner can remove it under People.",
  "error.unreachable":
    "The server cannot be reached. Is the phone on the creamery's Wi-Fi?",
  "error.other": "That did not work. Try again.",
};
