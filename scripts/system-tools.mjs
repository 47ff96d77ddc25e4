// Programs from outside npm that some checks need, and the Debian line that installs each.
export const systemTools = [
  {
    name: 'Chromium',
    programs: ['chromium', 'chromium-browser', 'google-chrome'],
    install: 'apt-get install -y chromium',
    checks: 'the app in a real browser (web/e2e)',
  },
  {
    name: 'GNU units',
    programs: ['units'],
    install: 'apt-get install -y units',
    checks: 'unit conversions against GNU units (engine/src/quantity)',
  },
];
