/** Where Microsoft serves Office.js, the one place beside its own that a page of the add-in asks. */
export const officeOrigin = "https://appsforoffice.microsoft.com";

/**
 * What the workbook page may do, as a Content-Security-Policy: run its own scripts, compile the part that writes
 * .xlsx files, and fetch nothing from elsewhere. Styles are set on elements by the grid, so they may be inline.
 */
export const pagePolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  // The thread that reads files.
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** What the phone page may do: it installs a service worker, and is installed itself; the grid's styles it has not. */
export const phonePolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
