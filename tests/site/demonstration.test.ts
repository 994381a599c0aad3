/** What is done with the demonstration in a browser, on one site that is built once for all of it. */

import { testForm } from "./add-in-a-browser.ts";
import { testBeside } from "./beside-in-a-browser.ts";
import { demoSite } from "./built-sites.ts";
import { testGrid } from "./grid-in-a-browser.ts";
import { testNewFile } from "./new-file-in-a-browser.ts";
import { testQuestions } from "./questions-in-a-browser.ts";
import { testWall } from "./wall-in-a-browser.ts";
import { testOrderOfWall } from "./wall-order-in-a-browser.ts";

const site = demoSite();

testWall(site);
testOrderOfWall(site);
testQuestions(site);
testGrid(site);
testBeside(site);
testForm(site);
testNewFile(site);
