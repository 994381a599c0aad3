/**
 * What can hurt someone in a pottery or through its catalogue, and what decides in each case.
 * Common practice throughout, no source: local rules, the label, the manual and a laboratory come
 * before these words.
 */

export interface CareTopic {
  readonly id: string;
  readonly title: string;
  readonly words: readonly string[];
  /** Whose word counts. */
  readonly decides: string;
}

export const careTopics: readonly CareTopic[] = [
  {
    id: "food",
    title: "Food and drink",
    words: [
      "This catalogue never says that a glaze is safe for food. A tile shows how a glaze looks. It does not show what the glaze gives off to vinegar, coffee or a dishwasher, and no picture and no formula can show that.",
      "A label that speaks of food contact speaks of that glaze alone, on the clay, at the cone and in the thickness that it names. It says nothing of two glazes over one another, of a blend, of a colour stirred in, or of a kiln that went too hot or not hot enough.",
      "Copper, and many other colouring metals, can make a glaze give off more than it did without them. Surfaces that are dry, matte, crawled, crazed or pinholed are harder to clean and easier to attack. Lustres and onglazes do not belong where food or lips touch unless their label says so.",
    ],
    decides:
      "A laboratory’s leaching test of the finished piece, and the law where it is sold or used. Until then: for looking at.",
  },
  {
    id: "dust",
    title: "Dust",
    words: [
      "Clay, glaze and most raw materials hold silica. Breathed in as dust it scars the lungs, and the dust that does it is too fine to see. The harm does not heal.",
      "Wipe up wet, with a sponge or a mop; never sweep, never blow, and use no household vacuum cleaner. Scrape and fettle while the clay is damp, not when it is dry. Sand nothing dry. Keep dry materials in closed tubs, weigh them slowly, and add powder to water rather than water to powder. Wash aprons, and leave them in the studio.",
      "Whoever weighs, mixes or sands wears a mask that fits the face, with a filter of class FFP3 or P100 or what the safety sheet asks for. Such a filter stops dust. It stops no gas.",
    ],
    decides:
      "The safety sheet of each material, and local rules for silica at work and in classes. Children do not handle dry materials.",
  },
  {
    id: "spraying",
    title: "Spraying",
    words: [
      "A spray gun turns glaze into a mist that stays in the air. Spray only into a booth that draws the air away from the face and out of the room or through a filter meant for it, with a fitted mask (FFP3 or P100) and eye protection on, and let the fan run on afterwards.",
    ],
    decides:
      "The booth’s and the gun’s manuals, the safety sheet of what is sprayed, and local rules.",
  },
  {
    id: "metals",
    title: "Metals and raw materials",
    words: [
      "Antimony, arsenic, barium, beryllium, cadmium, chromium, cobalt, copper, lead, lithium, manganese, nickel, selenium, thallium, uranium and vanadium are in some glazes, stains and clays, old ones above all. Each harms in its own way, raw, as dust, as fume in the kiln, or in the mouth.",
      "Know what is in the bucket before a hand goes in. Wear gloves for oxides and washes, do not eat or drink at the glazing table, wash hands before leaving it, and keep materials in the containers that they came in, with their labels. What is left over does not go down the drain.",
      "Some materials burn skin and eyes: wood ash stirred in water is a lye.",
    ],
    decides: "The label and the safety sheet of that very product, and local rules for waste.",
  },
  {
    id: "fumes",
    title: "Fumes",
    words: [
      "Kilns give off fumes: carbon monoxide, sulphur and fluorine from clay, metals such as manganese, chromium and lead from glazes, and acrid smoke where wax, latex, paper or lustre burns off. Peel latex and tape before firing. Fire with the kiln’s extraction on and the room aired, and stay out of the room while it is heating.",
      "Lustres and their thinners give off solvent while they are brushed on and again as they burn: open air or extraction for both, and no flame near.",
      "Salt, soda, raku, saggar and pit firings smoke and fume in the open: outdoors, stand upwind and at a distance, with nobody’s window downwind. A raku piece comes out glowing and sets fire to what it is put into: clear the ground, wear what the heat asks for on face, hands and feet, keep water and a lid at hand, and stay out of the smoke, which holds carbon monoxide.",
    ],
    decides:
      "The kiln’s manual, the product’s safety sheet, and an alarm for carbon monoxide in the kiln room.",
  },
  {
    id: "kilns",
    title: "Hot kilns and damp work",
    words: [
      "Work that looks dry can hold water, and water that boils inside clay bursts it. Dry it through, warm it slowly, and keep out of the kiln a piece that feels cold: it is still damp.",
      "A kiln burns skin through its lid, dazzles through its spyhole and holds current in its elements. Look in only through dark glasses made for it, open it only when it is cool enough for bare hands, and switch it off at the wall before touching anything inside. Nobody opens a kiln alone for the first time.",
      "Clay meant for a low fire melts at a high one. A piece of it in a stoneware load becomes a puddle on the shelf, and 06 is not 6: read the programme aloud to somebody.",
    ],
    decides: "The kiln’s manual, and whoever answers for the kiln.",
  },
  {
    id: "drips",
    title: "Sharp drips and broken tiles",
    words: [
      "A run of glaze at a foot, a splinter of a stuck tile, the edge of a chipped one: all are glass, and cut like it. Run no finger along a foot. Wear gloves and eye protection to unload, to chisel and to grind, and grind wet.",
    ],
    decides: "The manual of the grinder, and the studio’s rule for who may use it.",
  },
  {
    id: "shelves",
    title: "Shelves, stilts and what runs",
    words: [
      "Keep kiln wash on the shelves and off the feet: it is dust when dry, so wet it before it is scraped. Wipe the foot bare, wider for what runs, and put doubtful pieces on a catch tray. Stilts leave sharp points: grind them off wet. A stilt holds only clay that stays stiff at that cone.",
    ],
    decides: "The label of the wash and of the stilts, and the clay’s own range of cones.",
  },
  {
    id: "refires",
    title: "Firing again",
    words: [
      "A fired piece put back may crack, bloat, run further or drop its glaze. Warm it slowly, put it on a catch tray, and treat it as a new test: what the first firing proved, the second may undo.",
    ],
    decides: "The range of the clay and of every glaze on it, in each firing anew.",
  },
  {
    id: "backs",
    title: "The backs of tiles",
    words: [
      "Wash glaze off the back and the foot before the tile goes to the kiln, and write the code where glaze will not cover it, in something that stays: scratched in, or in underglaze or oxide.",
    ],
    decides:
      "Whoever unloads: a tile that cannot be read, or is stuck to the shelf, tells nothing.",
  },
  {
    id: "photographs",
    title: "Photographs and names",
    words: [
      "The photographs published here carry no place, device, name or date beside the picture. Faces, hands that somebody knows, handwriting, name tags, school crests and whatever stands on the table behind are in the picture itself: no program here finds them, so somebody must look.",
      "Photograph the tile alone, on plain ground, with its code and nothing else that can be read. Makers who are minors appear by a code and by no name, in pictures, notes and file names alike. What was once shared stays in the history of the archive and with everyone who has a copy, so look before handing in.",
    ],
    decides:
      "Whoever answers for the makers, their guardians where they are minors, and the law on pictures of people.",
  },
];
