import { browserPath } from './browser/support/chromium';
import { launchBrowser, openPage } from './browser/support/browser';
import { builtSite } from './browser/support/builtSite';
const { base } = await builtSite();
const browser = await launchBrowser(await browserPath());
const wait=(ms:number)=>new Promise((r)=>setTimeout(r,ms));
const jobs = process.argv.slice(2).map((a)=>a.split(':')); // size:theme:lang:screen:style
for (const [size, theme, lang, screen, style] of jobs as any) {
  const { page, errors } = await openPage(browser, `${base}?lang=${lang}&theme=${theme}&screen=roof`, { size, theme } as any);
  await wait(700);
  if (style) await page.selectOption('#own-style', style);
  await wait(300);
  if (screen !== 'roof') await page.evaluate((s)=>(window as any).__tt.go(s), screen);
  await wait(500);
  await page.screenshot({ path: `/tmp/c/own-${screen}-${style ?? 'gable'}-${size}-${theme}-${lang}.png`, fullPage: true });
  if (errors.length) console.log(size,theme,lang,screen,style,errors);
  await page.close();
}
process.exit(0);
