import type { Page } from "playwright-core";

/** What an element of a page names: an address as it is written there. */
interface Reference {
  readonly written: string;
  /** The page cannot be shown without it, unlike what a reader may click. */
  readonly isLoaded: boolean;
}

/** The references of each text of a page, read without running it; all at once, since the way to a browser is long. */
export const referencesIn = (page: Page, texts: readonly string[]): Promise<Reference[][]> =>
  page.evaluate(
    (each) =>
      each.map((text) => {
        const read = new DOMParser().parseFromString(text, "text/html");
        return [...read.querySelectorAll("a[href], link[href], script[src], img[src]")].map((element) => ({
          written: element.getAttribute(element.matches("a, link") ? "href" : "src") ?? "",
          isLoaded: !element.matches("a"),
        }));
      }),
    texts,
  );

interface Site {
  /** Where the site is tried, with a slash at its end. */
  readonly address: string;
  /** Where it will be served from, without one. */
  readonly origin: string;
  /** Other hosts that its pages may load from. */
  readonly trusted: readonly string[];
}

/** What is wrong with a reference as such, or the address to ask for; neither where it leads to another host. */
export function followed(
  { written, isLoaded }: Reference,
  path: string,
  site: Site,
): { readonly fault?: string; readonly address?: string } {
  const leads = new URL(written, site.address + path);
  if (!/^https?:$/.test(leads.protocol)) return {};
  const [target] = leads.href.split("#") as [string];
  if (`${target}/`.startsWith(`${site.origin}/`)) {
    return { address: site.address + target.slice(site.origin.length + 1) };
  }
  if (leads.origin === new URL(site.address).origin && !/^(https?:)?\/\//.test(written)) {
    return target.startsWith(site.address) ? { address: target } : { fault: "leads out of the site" };
  }
  if (/^(localhost|127\.0\.0\.1|\[::1\])$/.test(leads.hostname)) return { fault: "is on the computer of the reader" };
  return isLoaded && !site.trusted.includes(leads.origin) ? { fault: "is loaded from elsewhere" } : {};
}
