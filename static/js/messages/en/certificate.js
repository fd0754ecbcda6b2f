// What the owner reads of the server's certificate. Comes after the page, with the
// texts of the sums.

export const CERTIFICATE = {
  "certificate.title": "https in the room",
  "certificate.ends_soon":
    "The server's certificate ends on {day} and was not renewed. After that day phones reach it no more. On the box, run: vatside tls",
  "certificate.root_key_away":
    "The server's certificate ends on {day}; renewing it takes the root's key that you keep elsewhere. On the box, run: vatside tls --root-key FILE",
  "certificate.address_changed":
    "The address of the box has changed. Phones that open the old one find nobody there. Give the box a fixed address in the router.",
  "certificate.address_lacking":
    "The box has an address that its certificate lacks. Bring the root's key and run on the box: vatside tls --root-key FILE",
  "certificate.root_ends_soon":
    "The room's root ends within half a year. Choose a quiet day, run on the box: vatside tls --new-root, and let every phone take the new root from the set-up page.",
  "certificate.clock_wrong":
    "The clock of the box is wrong. Set it: phones take its certificate for ended or not yet begun.",
  "certificate.other":
    "Something is to be seen to with the server's certificate. On the box, run: vatside check",
};
