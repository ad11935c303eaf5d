/** Everyday words of this trade that a slip of the finger may have been meant as; none of them is a hazard's own. */

export const HOUSE_WORDS: ReadonlySet<string> = new Set(
  `molding moldings moulding mouldings linen sewing silicone grass glass living dining floating plank planks board boards carton cartons level leveling leveled trim trims caulk grout stair stairs closet pantry bedroom kitchen hall hallway landing porch laundry office studio nursery
  shoe base quarter round reducer nosing threshold transition underlay underlayment subfloor plywood laminate hardwood carpet padding staple staples tack stagger pattern herringbone direction layout length width height depth inches square feet measure measured waste extra spare boxes pieces
  pine maple walnut hickory cherry birch bamboo cork marble slate granite beige ivory cream taupe gray grey white brown color colors shade sheen gloss satin matte texture grain bevel edge edges corner corners miter miters cope coped scribe undercut doorway doorways jamb casing frame frames
  hinge knob stool bench island cabinet cabinets counter fridge range stove sofa table chair shelf shelves window windows wall walls ceiling budget price prices cost costs delivery order orders return returns receipt store pickup truck lumber stock stick sticks sheet sheets roll rolls
  molly milly holly polly sally wally billy jilly bella becky betty marie maria clare claire clara gavin garry gary gail gwen leah leeds leigh lena sparky smokey stockton burton boston austin dallas denver fiona sasha dasha masha natasha trisha shane shawn wendy randy sandy brandy cindy lindy mindy
  sqft sqm lvp lvt spc wpc osb mdf diy hoa hvac faq pls plz thx idk btw tho gonna wanna gotta lemme kinda sorta alot aswell yall hows whats thats heres wheres theres dont cant wont isnt arent didnt doesnt havent hasnt couldnt shouldnt wouldnt youre theyre hes shes its ive ill im weve
  tmold tmolding wifey hubby fave vynil vinly vynl lamanate laminite flooor florr flor planck`
    .split(/\s+/)
    .filter((word) => word !== ''),
);
