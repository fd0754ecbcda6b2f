// What this phone needs to be ready: the home screen, a pedal, the voice.

export const DEVICE = {
  "install.title": "Put it on the home screen",
  "install.why":
    "From the home screen it opens with no network, and the phone does not wipe its data after some days.",
  "install.iphone_1": "Open this page in Safari.",
  "install.iphone_2": 'Tap Share, then "Add to Home Screen".',
  "install.iphone_3": "Open it from the home screen and join again there.",
  "install.android_1": "Open this page in Chrome.",
  "install.android_2":
    'Tap the three dots, then "Install app" or "Add to home screen".',
  "install.android_3": "Open it from the home screen.",
  "install.locked":
    "A locked phone cannot ring from this app. For a time that must not be missed, set the phone's own timer too.",

  "hands.title": "Pedal, clicker, voice",
  "pedal.use": "Use a pedal or clicker",
  "pedal.use_detail": "It presses the large button of a step, also under lock",
  "pedal.do": "Presses the large button",
  "pedal.other": "Silences the alarm, or says it again",
  "pedal.keys": "{keys}. Tap to change.",
  "pedal.press": "Press your pedal now",
  "pedal.press_detail": "Or tap here to leave it as it is",
  "pedal.usual": "Take the usual keys again",
  "voice.use": "Read entries aloud",
  "voice.use_detail": "Says what was saved and what comes next",
  "voice.none": "This phone has no voice for this language",
  "voice.test": "Entries will sound like this.",
  "word.on": "On",
  "word.off": "Off",
};
