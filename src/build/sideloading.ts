/** How to load the add-in into Excel, in words for the person in front of it. */
export function sideloading(manifest: string, authorityFile: string, platform: NodeJS.Platform): string {
  const systems =
    platform === "darwin"
      ? [onMac, onTheWeb]
      : platform === "win32"
        ? [onWindows, onTheWeb]
        : [onWindows, onMac, onTheWeb];
  return systems.map((words) => words(manifest, authorityFile)).join("\n");
}

const onWindows = (manifest: string, authorityFile: string): string => `Excel on Windows
  1. Once: trust this computer's own certificate. In a command prompt:
       certutil -user -addstore Root "${authorityFile}"
     and answer Yes.
  2. Once: share the folder of this file, which holds nothing else:
       ${manifest}
     Right-click the folder, Properties, Sharing, Share, and note the network path, such as \\\\MY-COMPUTER\\sideload.
  3. Once, in Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs. Type the network path,
     Add catalog, tick Show in Menu, OK, and start Excel again.
  4. Home, Add-ins, More Add-ins, SHARED FOLDER, Tea Mass Balance, Add.
  To take the certificate back: certutil -user -delstore Root "Tea Mass Balance on this computer"
`;

const onMac = (manifest: string, authorityFile: string): string => `Excel on a Mac
  1. Once: trust this computer's own certificate. In Terminal:
       security add-trusted-cert -r trustRoot -k ~/Library/Keychains/login.keychain-db "${authorityFile}"
     and give your password.
  2. Copy the manifest to where Excel looks for it:
       mkdir -p ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef
       cp "${manifest}" ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef/tea-mass-balance.xml
  3. Start Excel again: Home, Add-ins, and choose Tea Mass Balance.
  To take the certificate back: Keychain Access, login, delete "Tea Mass Balance on this computer".
`;

const onTheWeb = (manifest: string, authorityFile: string): string => `Excel on the web
  1. Open https://localhost:3000/pane.html in the same browser. When it warns, trust the certificate
       ${authorityFile}
     as above, or in the browser's settings as an authority for websites.
  2. Open a workbook in Excel on the web: Home, Add-ins, More Add-ins, Upload My Add-in, and choose
       ${manifest}
`;
