import { X509Certificate } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createCA, createCert } from "mkcert";

export interface Certificate {
  readonly key: string;
  /** The certificate of localhost, followed by the one that vouches for it. */
  readonly chain: string;
  /** The file that a person tells their system to trust. */
  readonly authorityFile: string;
}

/** Systems refuse certificates that run for longer than 825 days. */
const daysValid = 800;

/** In the time left there should be a season. */
const daysToSpare = 30;

/**
 * A certificate for localhost, made on this computer and kept in `folder`. It is signed by an authority whose key is
 * thrown away at once: whoever trusts that authority trusts this one certificate and nothing that anybody could sign
 * later.
 */
export async function localCertificate(folder: string): Promise<Certificate> {
  const file = (name: string) => join(folder, name);
  const authorityFile = file("tea-mass-balance-local.crt");
  const [keyFile, chainFile] = [file("localhost.key"), file("localhost-chain.crt")];
  if (![authorityFile, keyFile, chainFile].every(existsSync) || !goodFor(readFileSync(chainFile, "utf8"))) {
    const authority = await createCA({
      organization: "Tea Mass Balance on this computer",
      countryCode: "XX",
      state: "none",
      locality: "none",
      validity: daysValid,
    });
    const domains = ["localhost", "127.0.0.1", "::1"];
    const { key, cert } = await createCert({ ca: authority, domains, validity: daysValid });
    mkdirSync(folder, { recursive: true });
    writeFileSync(authorityFile, authority.cert);
    writeFileSync(keyFile, key, { mode: 0o600 });
    chmodSync(keyFile, 0o600);
    writeFileSync(chainFile, cert + authority.cert);
  }
  return { key: readFileSync(keyFile, "utf8"), chain: readFileSync(chainFile, "utf8"), authorityFile };
}

const goodFor = (certificate: string): boolean =>
  Date.parse(new X509Certificate(certificate).validTo) > Date.now() + daysToSpare * 86_400_000;
