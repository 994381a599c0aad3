import { least, record } from "../archive/archives.ts";
import { testSlips } from "./slips.ts";

const studio = (line: string) => ({ "studio.yaml": `${least["studio.yaml"]}${line}\n` });
const page = (name: string, text: string) => ({ [`pages/${name}`]: text });

testSlips("the studio's own", {
  "a website without a lock": studio("website: http://weir.example/"),
  "a website without its beginning": studio("website: weir.example"),
  "a colour by its name": studio("accent: teal"),
  "a colour of three digits": studio('accent: "#2a8"'),
  "a colour that YAML takes for a remark": studio("accent: #2f7d6d"),
  "a mark as a photograph": studio("mark: {file: mark.jpg, alt: A weir}"),
  "a mark in a folder": studio("mark: {file: pictures/mark.svg, alt: A weir}"),
  "a mark without words": studio("mark: {file: mark.svg}"),
  "a mark's name alone": studio("mark: mark.svg"),
  "a welcome in a list": studio("welcome: [Hello, Come in]"),
  "a page without a title": page("hours.md", record("heading: Hours", "Saturdays.")),
  "a page without a head": page("hours.md", "Saturdays.\n"),
  "a page as an editor saves it": page("hours.md.txt", record("title: Hours", "Saturdays.")),
  "a page in a folder": page("about/hours.md", record("title: Hours", "Saturdays.")),
  "a picture among the pages": page("map.png", ""),
  "two pages of one name": {
    ...page("hours.md", record("title: Hours", "Saturdays.")),
    ...page("Hours.md", record("title: Opening", "Saturdays.")),
  },
});
