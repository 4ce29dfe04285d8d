/** What sheets of several sample books say. */
export const englishParts = {
  invented: "Wren Terrace is an invented farm, and every number here is invented. Type over the tinted cells.",
  footer: "&LWren Terrace, invented&RPage &P of &N",
  /** The same answers once more, without a function of ours. */
  proof: {
    title: "Proof",
    says: "The same answers by plain formulas, from what is typed on each sheet, without one TEA function.",
    what: "What",
    told: "by TEA",
    plain: "by plain formulas",
    difference: "difference",
    agrees: "agrees",
    lookHere: "look here",
    largest: "Largest difference, above 1 as a share",
    allAgree: "every answer agrees to nine decimals",
    differs: "look below for the one that differs",
  },
};
