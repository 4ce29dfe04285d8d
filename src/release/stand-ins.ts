/** Stand-ins for Office.js in the proof of a release: no more than the two pages ask for. */

/** For the functions page: a place to put the functions, and the error that they throw. */
const customFunctions = `
  window.associated = {};
  window.CustomFunctions = {
    associate: (id, call) => { window.associated[id] = call; },
    Error: class extends Error { constructor(code, message) { super(message); this.code = code; } },
  };`;

/** For the pane: an Excel that is there and refuses whatever is asked of it. */
const office = `
  window.Excel = { run: async () => { throw Object.assign(new Error(), { code: "InvalidSelection" }); } };
  window.Office = {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host: "Excel" }),
    context: { displayLanguage: "en-US", officeTheme: { bodyBackgroundColor: "#FFFFFF" } },
  };`;

export const officeStandIn = (address: string): string =>
  address.includes("custom-functions") ? customFunctions : office;
