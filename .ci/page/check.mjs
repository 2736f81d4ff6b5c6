// Opens each page given in headless Chromium, at the width of a desk and of a
// phone, and fails on a console error, on anything fetched from elsewhere, on a
// page wider than the phone, and on what axe-core finds against WCAG 2 A and AA.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM || "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
let faults = 0;
const fault = (text) => { faults++; console.log("  " + text); };
for (const file of process.argv.slice(2)) {
  for (const [name, width, height] of [["desk", 1200, 900], ["phone", 390, 800]]) {
    console.log(`${file} (${name})`);
    const page = await browser.newPage({ viewport: { width, height } });
    page.on("console", (m) => { if (m.type() === "error") fault("console: " + m.text()); });
    page.on("pageerror", (e) => fault("script: " + e.message));
    page.on("request", (r) => { if (!/^(file|data):/.test(r.url())) fault("fetches " + r.url()); });
    await page.goto(pathToFileURL(resolve(file)).href);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    if (wide > width + 1) fault(`the page is ${wide} wide`);
    await page.evaluate(axe);
    const found = await page.evaluate(() => globalThis.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa"] }));
    for (const v of found.violations) fault(`${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(" | ")}`);
    console.log(`  ${found.passes.length} rules passed`);
    await page.close();
  }
}
await browser.close();
process.exit(faults ? 1 : 0);
