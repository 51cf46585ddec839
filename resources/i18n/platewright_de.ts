<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Say</name>
    <message>
        <source>A hub lets go with a bang: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loaded tool can kill when it lets go. Stand out of line, glasses on, a guard or chain over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prove the tool once at </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DO NOT HEAT A PACK WITH ITS SPRINGS IN PLACE: springs lose their temper, a keeper lets go, and the energy comes out at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat the hub, never the tool, and not while it is loaded: let the load off, heat, load again. Hot steel is weak; </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not heat springs, nor the tool under load: hot steel is weak.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not heat the tool under load: hot steel is weak.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blow on a loaded tool adds half its load again. Never on a ram, a brittle plate or a cast flange.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoses and couplings: whole, rated for the ram, out of the line of the rod. Never stand behind a loaded ram.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grind flame-cut edges at bore and holes 1 to 2 mm deep; no weld nearer a hole than twice the thickness; no burrs on the lands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figures take sound steel and good threads for granted. Local rules and licensed practice come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such folder; make it first or choose another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder or the file is write-protected; save somewhere else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is read-only; save somewhere else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full; make room or save somewhere else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is larger than is allowed here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name is too long; choose a shorter one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder; give a file name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no permission to read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder; give a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a device or a pipe, not a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>larger than </source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Open a job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jobs (*.plate.json);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>“%1” is not a number. Type it like %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::BentView</name>
    <message>
        <source>How much larger the bend is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bent plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arrow keys turn it, plus and minus draw the bend larger or smaller, Home starts over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to turn it. Dashes: where the rim was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not worked out yet. The verdict says what is needed first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend drawn as large as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend drawn %1 times larger than it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full load, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::CheckRow</name>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted %1 or more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::Checker</name>
    <message>
        <source>an unknown fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the check was stopped</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::CurveView</name>
    <message>
        <source>Load against bend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now %1, bent %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1¼ × full load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first yield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folds later than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it folds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × full load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not worked out yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2, bent %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let go from full load it stays bent %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in, centre to stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm, centre to stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lbf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>× full load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of set at full load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes with the first verdict.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::Document</name>
    <message>
        <source>The copy of what it held before, %1, was %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to what is saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::FieldBox</name>
    <message>
        <source>%1: choices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::FieldText</name>
    <message>
        <source>%1 of what? Fractions are inches here: type %1 in, or a figure in mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can be read in two ways. Type %2 or %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a whole number. Type it like 6.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::Fields</name>
    <message>
        <source>Disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rectangle or square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Polygon, from the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unknown scrap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cast iron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cast aluminium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bronze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rusty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is pulled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is squeezed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of this job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name on the sheet and on the cut file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeeze springs down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull something off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeeze further</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far past the assembled length the springs must go until the keepers are free. The keeper&apos;s lip plus 1 mm is common.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swollen by rust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much thicker the pack has grown than when it was new. It takes that much of the springs&apos; travel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anything worth keeping with the job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bolts that go into the part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pins that are squeezed at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt circle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin circle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure over two opposite pins, then take off one pin. 0.5 mm wrong still fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Access hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bolt and about 1 mm more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wide enough for the keepers to come out and a pick to reach in: the keeper and 3 mm more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the pair of keepers as they sit on the pin. The widest place counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retainer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the flat face that the plate will press on. 0.5 mm wrong still fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across one pin, clear of the groove, with the vernier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin sticks out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the retainer&apos;s face to the pin&apos;s end, assembled. It says how soon the pin lets go of the retainer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt washer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Land across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the washer under the bolt&apos;s head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside of the ring of plate that bears. Empty: the whole retainer bears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First one at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The angle of the first station, from three o&apos;clock, turning left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hole shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open to the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From end to end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slot turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the ray that runs from the bore through the station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only if somebody measured it. Leave it empty otherwise: what the fit asks, or what wrench or ram can make, is worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What all the stations together push back with, squeezed. A range like 6.8-7.5 kN is taken at its high end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many springs like this stand at one pin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assembled length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between its two seats, as it is built in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand one loose spring up and measure it. 1 mm wrong still serves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spring&apos;s length when that force was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it pushes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the manual, a range like 650-725 N, or read off a scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rises by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Force for each millimetre or inch. Two readings give it as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeezed solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeeze it in the vice until the coils touch, slowly, and measure. Empty: worked out from the wire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the wire, where it is not worn. 0.1 mm matters here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coil outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the coil, in the middle of the spring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coils that move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All turns less the ones that lie closed at the ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coils in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count the turns from tip to tip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do the end coils lie closed, and are they ground flat?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed, ground flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open, ground flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it sits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It sits on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody knows how tight nearly every hub is. Leave the figures empty then: wrench or ram decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A straight shaft, pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A taper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loose fit, held by rust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shaft across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the hub sits. On a taper: halfway along it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bored through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hole through a hollow shaft. A solid one: leave it empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sits on a length of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the shaft is inside the hub.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hub across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hub itself, without flange or spokes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shaft larger by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much larger the shaft was than the hole, on the diameter, from a drawing or a like part. A range like 0.02-0.05 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the taper and the axis. 1 in 10 on the diameter is 2.86 degrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the nut drew it on, from hand-tight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It takes about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own guess, or what came off last time. It goes before every figure of the fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hub made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grey, short chips, rings dull: cast iron. Bolts strip out of it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shaft made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw pushes on its end. 1045 is common for shafts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rust makes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 clean, 1.5 rusty, 2.5 rusted fast (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Friction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: 0.10 to 0.35, usual for pulling off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the tool grips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolts into the hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolts that go into tapped holes of the part. None when jaws or legs hold it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Their thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try a screw in the hub&apos;s holes: M12, 1/2-13.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Their grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamped on the heads. No stamp: take the lowest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screwed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep they go. Count the turns and multiply by the pitch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The holes&apos; thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chase it with a tap and look. Rusty threads carry less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jaws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jaws that hook behind a flange.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jaw width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the rim, where it bears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jaw reaches in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the flange&apos;s rim inward, as far as it bears. The closer to the hub, the better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flange across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the jaws hold on to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flange root across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the flange grows out of the hub, without the rounding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flange thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At its root, the thinnest place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flange made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cast flange is what usually breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legs or studs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rods between a strongback and the part. None when the plate is bolted on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legs apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From middle to middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the crests and the pitch: M16, 5/8-11.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamped on the end. Threaded rod from a hardware store is soft.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between nut and part. Long legs store more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ram</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the ram&apos;s plate. 12 t is 118 kN. No ram: leave all of this empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piston area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the ram&apos;s plate, of the ring that pushes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relief valve at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the pump&apos;s valve lets through: 700 bar, 10,000 psi. Set lower is safer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rod thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rod through the ram: M24, 1-8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rod grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamped on its end. No stamp: take the lowest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it comes out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part is at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hub heated to open the fit. Never a pack with its springs in place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tool is at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it under 100 degrees C: hot steel is weak.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pushes against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What holds the other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shaft itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bar across the back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stop bolt in the shaft&apos;s end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its thread, like M16.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamped on its head. No stamp: take the lowest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep it goes into the shaft. Count the turns and multiply by the pitch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its head across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it seats on the shaft&apos;s face. Empty: it does not seat, the thread carries all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the two places the bar rests on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the bar, as it lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the direction of the pull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar steel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The grade, if you know it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plasma table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Torch table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand torch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw and drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kerf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the cut. Cut a slit in scrap and measure it with feelers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holes off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far a hole&apos;s centre may be from where it was meant. A table 0.5 mm, by hand 1 mm or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holes grow by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much larger than drawn a hole comes out, on the radius.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 is right for sound steel and known springs. Take more when you had to guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What may stay bent when the load is off. 0.02 mm is what a dial can just see.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp it with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A round load to mark on the tool. Empty: the design load, rounded up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure clear of the burnt edge, in three places. Use the thinnest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The grade, if a stamp or a certificate says it. Otherwise leave it at unknown scrap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finished disc, over its centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From end to end. The bore is in the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across, from edge to edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the corners off; sharp ones cut hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plates stacked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loose plates on top of each other. Two are twice as strong as one, not four times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file on its edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a file over a clean edge. It bites on steel that bends; it skates on steel that snaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bites</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A strip of it, bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw off a strip and bend it flat in the vice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cracks seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at edges and old holes with a lamp and chalk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not looked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre and screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the crests, and the pitch with a gauge: M20, 3/4-10 UNC, 1-5 ACME, Tr 24x5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamped on its head or end. No stamp: take the lowest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate&apos;s centre hole: the screw and half a millimetre or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore tapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the plate itself holds the screw: the thread in its bore, like M20.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washer across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside of the washer under the nut. It may not cover an access hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washer thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole stack under the nut. A thin washer does not spread the load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bears out to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the ring in which nut and washer really bear, if you know it. Empty: worked out from nut and washer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even all over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard and flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oil it: a dry thread wastes the wrench and hides the load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with moly paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread looks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire-brush it and look at the flanks. Worn and damaged threads carry less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screws into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shaft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which is made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part that holds the thread. A soft one strips first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread engaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deep the screw really goes in. Count the turns and multiply by the pitch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nut grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamped on a face of the nut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nut height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread in the nut, without the chamfers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the face the screw enters to the faces the plate bears on, assembled. A straight edge over the retainers helps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usable thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread from that face to the free end of the screw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread from its tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the free end back to the plain shank. Empty: threaded all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the plate to the shaft&apos;s end when the pull begins, and what it must still come. A long thin screw buckles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flat end that pushes on the shaft. Empty: the root of the thread.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrench length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the nut&apos;s centre to the middle of your hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A puller is loaded by whoever leans on it. 400 N is a strong pull with one arm (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>250 N is a firm pull with one arm (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hammer on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blow on the loaded screw counts half as much again. Never on a ram, a brittle plate or a cast flange.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::FiguresPanel</name>
    <message>
        <source>Figures of the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the springs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Known total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the load comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load from the springs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A known total counts instead of the springs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove spring %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove spring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spring %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove reading %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wire, coils and rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a spring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a spring inside it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::GroupHeader</name>
    <message>
        <source>%1. Something is needed here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::JobFiles</name>
    <message>
        <source>Unsaved changes cannot be kept safe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has changes that were not saved when the program stopped, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its file was saved after that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(%1 more after this one.)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be saved: %2. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job is still here, and kept safe until it is saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job is still here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jobs (*.plate.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no longer where it was. The job is still here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Someone else has changed %1 on the disk. Here it stands as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take theirs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: someone else has changed %1 since it was read here. Saved over, theirs stays as %1~.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes cannot be kept safe just now: %1. Save the job soon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another window has taken it already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be opened: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open in another window too. Of two that save, the second is asked before anything is overwritten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is saved. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be read: %2. The job is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to what %1 holds. Undo brings back what stood here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::JobPage</name>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More on page %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of plate. Scale 1:%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks, weakest first. The line is what was wanted.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::LadderFinder</name>
    <message>
        <source>an unknown fault</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::LadderView</name>
    <message>
        <source>Working out every stock thickness…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comes when the figures it needs are there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set, in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>have</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right go from thickness to thickness, Enter takes one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 × wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not for want of strength, but for: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First to give: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>working it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thinnest that holds: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter takes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 thinner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 thicker</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::LowerStrip</name>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands at the left of the strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the strip shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fold the lower strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the lower strip</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::NoticeBar</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::PlanView</name>
    <message>
        <source>Stress, ksi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stress, MPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yields %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deflection, in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deflection, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full load, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first at %1°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not worked out yet. The verdict says what is needed first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin circle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Access holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First station&apos;s angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan of the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab goes from part to part, the arrow keys change it by one step, F shows it all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deflection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the plan shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: arrow keys change it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::Preferences</name>
    <message>
        <source>Preferences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gliding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drag snaps to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/32 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/16 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/8 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1/4 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::SectionView</name>
    <message>
        <source>solid before that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight, %1 to solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 short of solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thread ends %1 too soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of thread left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assembled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squeezed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel of the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solid, %1 too far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight: %1 to solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it must come off is not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel is not known. Needed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the springs open is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The springs are free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The springs push %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backed off %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Springs %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>springs %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>push %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dashes: size not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spring %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thread %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::Sentences</name>
    <message>
        <source>Something is pulled off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Springs in a ring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Springs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 further</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, each placed by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on Ø%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many, and on which circle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bolt holes %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>access holes %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody knows how tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A straight shaft, pressed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ø%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asks for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bolts %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 jaws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 legs %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolts, jaws or legs?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ram</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rod %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ram, not all given yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrench, ram or fit decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, what the fit may ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, what the wrench can make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, what the ram can make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody states it: %1 is what the tool may do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from the springs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No springs and no load yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Springs, not all measured yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown scrap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>disc Ø%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>disc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar %1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>polygon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No screw yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washer %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shaft itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2 × %3, %4 apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop bolt %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, holes ±&#xa0;%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, stamped %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and %2 of set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and no set to see</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::StripPane</name>
    <message>
        <source>plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>retainer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hub</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backing bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jaw</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::TopBar</name>
    <message>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes a DXF for the cutting table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writes a STEP solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::VerdictHead</name>
    <message>
        <source>holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict: %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2&#xa0;%</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::VerdictPanel</name>
    <message>
        <source>on the ram&apos;s gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full squeeze takes %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full load takes %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not enough: full squeeze takes %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not enough: full load takes %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full squeeze takes %1 on the wrench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full load takes %1 on the wrench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full load is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop at %1. Rated load %2. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions: %1 %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks, weakest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check stopped on a fault of the program: %1. Undo the last change; the job is safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 are still needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is the only one left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more, all hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pw::gui::Window</name>
    <message>
        <source>Print preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw the changes away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not write</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeeze: disc over a full ring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeeze: bar, two at a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull: plate with bolts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull: strongback on two legs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Samples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to what is saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print preview…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preferences…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed since saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] - Platewright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The verdict is “%1”. %2

The file will say so on its face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing or program for the table (*.dxf *.svg *.ngc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid (*.step *.stp)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known here and kept as it is: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The verdict is still being worked out. Try again in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
