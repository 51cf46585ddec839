<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Say</name>
    <message>
        <source>full load</source>
        <translation>voller Last</translation>
    </message>
    <message>
        <source>full spring load</source>
        <translation>voller Federkraft</translation>
    </message>
    <message>
        <source>This plate</source>
        <translation>Diese Platte</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 holds with less in hand than wanted: it folds at %2 x the load, wanted %3.</source>
        <translation>%1 hält, aber knapp: klappt beim %2-Fachen der Last zusammen, verlangt ist %3.</translation>
    </message>
    <message>
        <source>No set to see at %1, but a quarter more leaves one.</source>
        <translation>Bei %1 bleibt nichts krumm, ein Viertel mehr verbiegt sie.</translation>
    </message>
    <message>
        <source>If one keeper hangs, the load tips the plate. All keepers out before letting up.</source>
        <translation>Hängt ein Keil, kippt die Platte. Alle Keile heraus, bevor abgelassen wird.</translation>
    </message>
    <message>
        <source>A rusted station could bend the plate: watch that all retainers move together.</source>
        <translation>Eine festgerostete Station kann die Platte verbiegen: alle Federteller müssen gemeinsam gehen.</translation>
    </message>
    <message>
        <source>Torque does not tell where to stop here: stop by turns and dial.</source>
        <translation>Das Drehmoment sagt hier nicht, wann Schluss ist: nach Umdrehungen und Messuhr aufhören.</translation>
    </message>
    <message>
        <source>The wrench can make more than the tool should take: stop by turns and dial.</source>
        <translation>Der Schlüssel kann mehr, als das Werkzeug soll: nach Umdrehungen und Messuhr aufhören.</translation>
    </message>
    <message>
        <source>A figure is missing.</source>
        <translation>Eine Angabe fehlt.</translation>
    </message>
    <message>
        <source>The plate stays flat at %1.</source>
        <translation>Bleibt bei %1 gerade.</translation>
    </message>
    <message>
        <source>The plate stays flat at %1. First to give: %2.</source>
        <translation>Bleibt bei %1 gerade. Zuerst gibt nach: %2.</translation>
    </message>
    <message>
        <source>%1 bends for good: %2 of set at %3.</source>
        <translation>%1 verbiegt sich auf Dauer: %2 bleiben nach %3.</translation>
    </message>
    <message>
        <source>%1 bends for good: %2 of set at %3, starting %4.</source>
        <translation>%1 verbiegt sich auf Dauer: %2 bleiben nach %3, zuerst %4.</translation>
    </message>
    <message>
        <source>%1 is too close to folding: it folds at %2 x the load.</source>
        <translation>%1 ist zu nahe am Zusammenklappen: beim %2-Fachen der Last.</translation>
    </message>
    <message>
        <source>%1 folds: it carries only %2 x the load.</source>
        <translation>%1 klappt zusammen: sie trägt nur das %2-Fache der Last.</translation>
    </message>
    <message>
        <source>%1 is stored in the springs and can kill. Stand out of line, glasses on, a guard or chain over the tool.</source>
        <translation>%1 stecken in den Federn und können töten. Nicht in der Achse stehen, Schutzbrille auf, Schutzgitter oder Kette über das Werkzeug.</translation>
    </message>
    <message>
        <source>A hub lets go with a bang: %1 in the bent tool alone, more in a ram and hose. Stand out of line, glasses on, a chain or blanket over it, the shaft&apos;s nut left on.</source>
        <translation>Eine Nabe lässt mit einem Knall los: %1 allein im gebogenen Werkzeug, mehr in Zylinder und Schlauch. Nicht in der Achse stehen, Schutzbrille auf, Kette oder Decke darüber, die Wellenmutter bleibt drauf.</translation>
    </message>
    <message>
        <source>A loaded tool can kill when it lets go. Stand out of line, glasses on, a guard or chain over it.</source>
        <translation>Ein Werkzeug unter Last kann töten, wenn es loslässt. Nicht in der Achse stehen, Schutzbrille auf, Schutzgitter oder Kette über das Werkzeug.</translation>
    </message>
    <message>
        <source>Prove the tool once at %1 before its first use; no set may be left.</source>
        <translation>Das Werkzeug vor dem ersten Einsatz einmal mit %1 prüfen; es darf keine bleibende Verformung zurückbleiben.</translation>
    </message>
    <message>
        <source>DO NOT HEAT A PACK WITH ITS SPRINGS IN PLACE: springs lose their temper, a keeper lets go, and the energy comes out at once.</source>
        <translation>EIN PAKET MIT EINGEBAUTEN FEDERN NICHT ERWÄRMEN: Federn glühen aus, ein Keil lässt los, und die Energie kommt auf einmal heraus.</translation>
    </message>
    <message>
        <source>Heat the hub, never the tool, and not while it is loaded: let the load off, heat, load again. Hot steel is weak; a hot ram leaks and bursts.</source>
        <translation>Die Nabe erwärmen, nie das Werkzeug, und nicht unter Last: entlasten, erwärmen, wieder belasten. Heißer Stahl ist schwach; ein heißer Zylinder leckt und platzt.</translation>
    </message>
    <message>
        <source>Heat the hub, never the tool, and not while it is loaded: let the load off, heat, load again. Hot steel is weak; a hot screw strips.</source>
        <translation>Die Nabe erwärmen, nie das Werkzeug, und nicht unter Last: entlasten, erwärmen, wieder belasten. Heißer Stahl ist schwach; eine heiße Spindel reißt im Gewinde aus.</translation>
    </message>
    <message>
        <source>Do not heat springs, nor the tool under load: hot steel is weak.</source>
        <translation>Weder Federn noch das Werkzeug unter Last erwärmen: heißer Stahl ist schwach.</translation>
    </message>
    <message>
        <source>Do not heat the tool under load: hot steel is weak.</source>
        <translation>Das Werkzeug unter Last nicht erwärmen: heißer Stahl ist schwach.</translation>
    </message>
    <message>
        <source>A blow on a loaded tool adds half its load again. Never on a ram, a brittle plate or a cast flange.</source>
        <translation>Ein Schlag auf ein Werkzeug unter Last gibt die halbe Last noch dazu. Nie auf einen Zylinder, eine spröde Platte oder einen Gussflansch.</translation>
    </message>
    <message>
        <source>Hoses and couplings: whole, rated for the ram, out of the line of the rod. Never stand behind a loaded ram.</source>
        <translation>Schläuche und Kupplungen: heil, für den Zylinder zugelassen, nicht in der Richtung der Stange. Nie hinter einem Zylinder unter Last stehen.</translation>
    </message>
    <message>
        <source>Grind flame-cut edges at bore and holes 1 to 2 mm deep; no weld nearer a hole than twice the thickness; no burrs on the lands.</source>
        <translation>Brennkanten an Bohrung und Löchern 1 bis 2 mm tief abschleifen; keine Schweißnaht näher am Loch als die doppelte Dicke; kein Grat auf den Auflagen.</translation>
    </message>
    <message>
        <source>The figures take sound steel and good threads for granted. Local rules and licensed practice come first.</source>
        <translation>Die Zahlen setzen gesunden Stahl und gute Gewinde voraus. Örtliche Vorschriften und Fachleute mit Zulassung gehen vor.</translation>
    </message>
    <message>
        <source>the rim</source>
        <translation>dem Rand</translation>
    </message>
    <message>
        <source>the bore</source>
        <translation>der Bohrung</translation>
    </message>
    <message>
        <source>access hole %1</source>
        <translation>Montageloch %1</translation>
    </message>
    <message>
        <source>extra hole %1</source>
        <translation>Zusatzloch %1</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>Bolts or legs bear on standard washers, %1 across</source>
        <translation>Schrauben oder Zugstangen liegen auf genormten Unterlegscheiben auf, Durchmesser %1</translation>
    </message>
    <message>
        <source>The land is not given: taken as %1 for the bending. Measure the bolts&apos; washers across.</source>
        <translation>Die Auflage ist nicht angegeben: für die Biegung mit %1 angenommen. Den Durchmesser der Scheiben unter den Schrauben messen.</translation>
    </message>
    <message>
        <source>The land is not given: taken as %1 for the bending. Measure the retainer across.</source>
        <translation>Die Auflage ist nicht angegeben: für die Biegung mit %1 angenommen. Den Durchmesser des Federtellers messen.</translation>
    </message>
    <message>
        <source>no land is left round the access holes</source>
        <translation>um die Montagelöcher bleibt keine Auflage</translation>
    </message>
    <message>
        <source>the centre bearing is smaller than the bore: nothing to press on</source>
        <translation>das mittlere Auflager ist kleiner als die Bohrung: nichts, worauf es drückt</translation>
    </message>
    <message>
        <source>Bending the plate</source>
        <translation>Die Platte wird gebogen</translation>
    </message>
    <message>
        <source>Trying one station hung</source>
        <translation>Eine hängende Station wird versucht</translation>
    </message>
    <message>
        <source>Bending it past yield</source>
        <translation>Über die Streckgrenze hinaus gebogen</translation>
    </message>
    <message>
        <source>The plate bends by more than half its thickness; the stiffening that comes with that is not counted, which is on the safe side.</source>
        <translation>Die Platte biegt sich um mehr als ihre halbe Dicke; die Versteifung, die dabei entsteht, ist nicht gerechnet, das liegt auf der sicheren Seite.</translation>
    </message>
    <message>
        <source>The worst stress has not settled: the last mesh moved it by %1 %.</source>
        <translation>Die größte Spannung steht noch nicht fest: das letzte Netz hat sie um %1 % verschoben.</translation>
    </message>
    <message>
        <source>A sharp inside corner has no finite elastic stress; the plate is judged by set and folding there. Round it.</source>
        <translation>Eine scharfe Innenecke hat keine endliche elastische Spannung; dort wird nach bleibender Verformung und Zusammenklappen gerechnet. Ausrunden.</translation>
    </message>
    <message>
        <source>The load is %1 off the middle, more than the centre bearing can balance by pushing; the screw bends with %2.</source>
        <translation>Die Last steht %1 neben der Mitte, mehr als das mittlere Auflager durch Druck ausgleichen kann; die Spindel biegt sich mit %2.</translation>
    </message>
    <message>
        <source>The washer bears on %1 % of its ring; the rest lifts.</source>
        <translation>Die Scheibe trägt auf %1 % ihres Rings; der Rest hebt ab.</translation>
    </message>
    <message>
        <source>the program tripped over itself (%1); please keep this job file and report it</source>
        <translation>das Programm ist über sich selbst gestolpert (%1); bitte diese Auftragsdatei aufheben und melden</translation>
    </message>
    <message>
        <source>the hub&apos;s pull is not worked out for want of %1: %2</source>
        <translation>die Abziehkraft der Nabe ist nicht ausgerechnet, es fehlt %1: %2</translation>
    </message>
    <message>
        <source>the hub may ask for %1 and the tool makes %2 at most: it may not come without heat or soaking</source>
        <translation>die Nabe kann %1 verlangen, und das Werkzeug schafft höchstens %2: ohne Wärme oder Rostlöser kommt sie vielleicht nicht</translation>
    </message>
    <message>
        <source>the hub may ask for %1, but the tool can make %2: it is checked for that</source>
        <translation>die Nabe kann %1 verlangen, das Werkzeug aber %2 schaffen: darauf wird es geprüft</translation>
    </message>
    <message>
        <source>not worked out for want of %1: %2</source>
        <translation>nicht ausgerechnet, es fehlt %1: %2</translation>
    </message>
    <message>
        <source>Needed: %1.</source>
        <translation>Gebraucht wird: %1.</translation>
    </message>
    <message>
        <source>must be more than 0</source>
        <translation>muss größer als 0 sein</translation>
    </message>
    <message>
        <source>the pull on the flange must be more than 0</source>
        <translation>der Zug am Flansch muss größer als 0 sein</translation>
    </message>
    <message>
        <source>must be less than &quot;outside&quot;; are the two swapped?</source>
        <translation>muss kleiner sein als &quot;outside&quot;; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>the jaws would reach the root of the flange: there is (outside - root) / 2 = %1 mm of it, and the overlap must be less. Measure from the rim inwards</source>
        <translation>die Klauen reichten bis an die Flanschwurzel: (outside - root) / 2 = %1 mm sind da, und die Überdeckung muss kleiner sein. Vom Rand nach innen messen</translation>
    </message>
    <message>
        <source>%1 mm is no grip on a flange of this size; measure again</source>
        <translation>%1 mm ist kein Griff an einem Flansch dieser Größe; noch einmal messen</translation>
    </message>
    <message>
        <source>must be at least 2</source>
        <translation>muss mindestens 2 sein</translation>
    </message>
    <message>
        <source>the jaws do not fit round the flange: %1 of them are wider than its rim. The width is that of one jaw</source>
        <translation>die Klauen passen nicht um den Flansch: %1 davon sind breiter als sein Umfang. Gemeint ist die Breite einer Klaue</translation>
    </message>
    <message>
        <source>one jaw cannot pull straight: use 2 or more, evenly spaced</source>
        <translation>eine Klaue kann nicht gerade ziehen: 2 oder mehr nehmen, gleichmäßig verteilt</translation>
    </message>
    <message>
        <source>the flange is too narrow beside its size to be worked out; measure outside and root again</source>
        <translation>der Flansch ist im Verhältnis zu seiner Größe zu schmal zum Rechnen; Außenmaß und Wurzel noch einmal messen</translation>
    </message>
    <message>
        <source>Flange under the jaws</source>
        <translation>Flansch unter den Klauen</translation>
    </message>
    <message>
        <source>Pressure under the jaws</source>
        <translation>Pressung unter den Klauen</translation>
    </message>
    <message>
        <source>The flange&apos;s material is not given: taken as the hub&apos;s.</source>
        <translation>Der Werkstoff des Flanschs ist nicht angegeben: wie die Nabe angenommen.</translation>
    </message>
    <message>
        <source>The flange&apos;s material is not given: taken as grey cast iron, the weakest grade. A file leaves grey dust on it; steel gives bright curls.</source>
        <translation>Der Werkstoff des Flanschs ist nicht angegeben: als Grauguss der schwächsten Sorte angenommen. Eine Feile hinterlässt darauf grauen Staub; Stahl gibt blanke Locken.</translation>
    </message>
    <message>
        <source>The jaws cover all but a twentieth of the flange&apos;s rim or more: they are taken to pull evenly all round, as a split ring does.</source>
        <translation>Die Klauen decken den Flanschrand bis auf ein Zwanzigstel oder ganz: angenommen, dass sie rundum gleichmäßig ziehen wie ein geteilter Ring.</translation>
    </message>
    <message>
        <source>One of %1 jaws may be slack: each of the rest is taken to carry %2 (common practice).</source>
        <translation>Eine von %1 Klauen kann lose sein: jede der übrigen ist mit %2 angenommen (übliche Praxis).</translation>
    </message>
    <message>
        <source>%1 jaws share the pull evenly: seat all of them before pulling.</source>
        <translation>%1 Klauen teilen sich den Zug gleichmäßig: vor dem Ziehen alle zum Anliegen bringen.</translation>
    </message>
    <message>
        <source>Turns count from where the retainers begin to move, not from hand-tight.</source>
        <translation>Die Umdrehungen zählen von da an, wo sich die Federteller bewegen, nicht von handfest.</translation>
    </message>
    <message>
        <source>Much more torque than this before anything moves: a retainer is stuck, a keeper has jammed or the pack is solid. Stop, look, let up.</source>
        <translation>Viel mehr Drehmoment als das, bevor sich etwas bewegt: ein Federteller klemmt, ein Keil hat sich verkantet oder das Paket ist auf Block. Anhalten, nachsehen, ablassen.</translation>
    </message>
    <message>
        <source>Much less: a spring is broken or missing, or a keeper is already out. Stop and count.</source>
        <translation>Viel weniger: eine Feder ist gebrochen oder fehlt, oder ein Keil ist schon heraus. Anhalten und zählen.</translation>
    </message>
    <message>
        <source>Torque high but the dial right: the screw is dry. Torque right but the dial high: the screw runs easier than taken. Believe the dial.</source>
        <translation>Drehmoment hoch, Messuhr stimmt: die Spindel ist trocken. Drehmoment stimmt, Messuhr hoch: die Spindel läuft leichter als angenommen. Der Messuhr glauben.</translation>
    </message>
    <message>
        <source>Turns count from snug, and only what plate and screw give; jaws, bolts and slack add to them.</source>
        <translation>Die Umdrehungen zählen vom Anliegen an und nur, was Platte und Spindel nachgeben; Klauen, Schrauben und Spiel kommen dazu.</translation>
    </message>
    <message>
        <source>Torque climbs and the dial does not: friction in the screw, or its point has seized. Oil it, start again.</source>
        <translation>Das Drehmoment steigt, die Messuhr nicht: Reibung in der Spindel, oder ihre Spitze hat gefressen. Ölen, von vorn anfangen.</translation>
    </message>
    <message>
        <source>The dial stands still or falls while you turn: something gives, the hub or the tool. Stop and look which.</source>
        <translation>Die Messuhr steht oder fällt, während gedreht wird: etwas gibt nach, die Nabe oder das Werkzeug. Anhalten und nachsehen, welches.</translation>
    </message>
    <message>
        <source>At full load and nothing moves: stand clear and wait. Then let the load off, and soak the joint or heat the hub. No longer wrench.</source>
        <translation>Volle Last und nichts bewegt sich: weggehen und warten. Dann entlasten und die Fuge mit Rostlöser tränken oder die Nabe erwärmen. Kein längerer Schlüssel.</translation>
    </message>
    <message>
        <source>a quarter</source>
        <translation>ein Viertel</translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation>drei Viertel</translation>
    </message>
    <message>
        <source>design load</source>
        <translation>Auslegungslast</translation>
    </message>
    <message>
        <source>rated load</source>
        <translation>Nennlast</translation>
    </message>
    <message>
        <source>force on the inner half of the lands</source>
        <translation>Kraft auf der inneren Hälfte der Auflagen</translation>
    </message>
    <message>
        <source>force on the outer half of the lands</source>
        <translation>Kraft auf der äußeren Hälfte der Auflagen</translation>
    </message>
    <message>
        <source>even pressure under the washer</source>
        <translation>gleichmäßigem Druck unter der Scheibe</translation>
    </message>
    <message>
        <source>a hard flat washer</source>
        <translation>einer harten, ebenen Scheibe</translation>
    </message>
    <message>
        <source>a washer too thin to spread</source>
        <translation>einer Scheibe, die zu dünn ist, um zu verteilen</translation>
    </message>
    <message>
        <source>%1. Then it holds.</source>
        <translation>%1. Dann hält es.</translation>
    </message>
    <message>
        <source>%1. Then %2 holds; the whole is thin.</source>
        <translation>%1. Dann hält „%2“; das Ganze ist knapp.</translation>
    </message>
    <message>
        <source>%1. Then %2 holds; the whole sets.</source>
        <translation>%1. Dann hält „%2“; das Ganze verbiegt sich.</translation>
    </message>
    <message>
        <source>%1. Then %2 holds; the whole breaks.</source>
        <translation>%1. Dann hält „%2“; das Ganze bricht.</translation>
    </message>
    <message>
        <source>%1. Then %2 holds; the whole incomplete.</source>
        <translation>%1. Dann hält „%2“; das Ganze ist unvollständig.</translation>
    </message>
    <message>
        <source>%1 %2 heavier.</source>
        <translation>%1 %2 schwerer.</translation>
    </message>
    <message>
        <source>Cut it from %1</source>
        <translation>Aus %1 schneiden</translation>
    </message>
    <message>
        <source>Squeeze two opposite stations at a time</source>
        <translation>Je zwei gegenüberliegende Stationen auf einmal drücken</translation>
    </message>
    <message>
        <source>Use a washer %1 thick</source>
        <translation>Eine Unterlegscheibe von %1 Dicke nehmen</translation>
    </message>
    <message>
        <source>Use a washer %1 across</source>
        <translation>Eine Unterlegscheibe von %1 Durchmesser nehmen</translation>
    </message>
    <message>
        <source>Use a screw of grade %1</source>
        <translation>Eine Spindel der Güte %1 nehmen</translation>
    </message>
    <message>
        <source>Use a nut of grade %1</source>
        <translation>Eine Mutter der Güte %1 nehmen</translation>
    </message>
    <message>
        <source>Use a nut %1 high</source>
        <translation>Eine Mutter von %1 Höhe nehmen</translation>
    </message>
    <message>
        <source>Screw it in %1 deep</source>
        <translation>%1 tief einschrauben</translation>
    </message>
    <message>
        <source>Grease thread and face with %1</source>
        <translation>Gewinde und Auflagefläche mit %1 schmieren</translation>
    </message>
    <message>
        <source>moly</source>
        <translation>Molypaste</translation>
    </message>
    <message>
        <source>Use a wrench no longer than %1</source>
        <translation>Einen Schlüssel nehmen, der nicht länger ist als %1</translation>
    </message>
    <message>
        <source>Set the ram&apos;s valve to %1</source>
        <translation>Das Ventil des Zylinders auf %1 stellen</translation>
    </message>
    <message>
        <source>Do not hammer on it</source>
        <translation>Nicht darauf schlagen</translation>
    </message>
    <message>
        <source>Let the tool cool to %1 first</source>
        <translation>Das Werkzeug erst auf %1 abkühlen lassen</translation>
    </message>
    <message>
        <source>Open the access holes to %1</source>
        <translation>Die Montagelöcher auf %1 aufweiten</translation>
    </message>
    <message>
        <source>Make the access holes %1</source>
        <translation>Die Montagelöcher mit %1 ausführen</translation>
    </message>
    <message>
        <source>Cut the disc %1 across</source>
        <translation>Die Scheibe mit %1 Durchmesser schneiden</translation>
    </message>
    <message>
        <source>Cut it %1 wide</source>
        <translation>%1 breit schneiden</translation>
    </message>
    <message>
        <source>Cut it by saw and drill</source>
        <translation>Mit Säge und Bohrer fertigen</translation>
    </message>
    <message>
        <source>Have it milled</source>
        <translation>Fräsen lassen</translation>
    </message>
    <message>
        <source>Use a screw with %1 of thread</source>
        <translation>Eine Spindel mit %1 Gewinde nehmen</translation>
    </message>
    <message>
        <source>Squeeze only %1 further</source>
        <translation>Nur %1 weiter zusammendrücken</translation>
    </message>
    <message>
        <source>Pack it up so that no more than %1 of the screw stands free</source>
        <translation>So unterbauen, dass höchstens %1 der Spindel frei stehen</translation>
    </message>
    <message>
        <source>Turn the screw&apos;s point no smaller than %1</source>
        <translation>Die Spitze der Spindel nicht dünner als %1 drehen</translation>
    </message>
    <message>
        <source>Use bolts of grade %1</source>
        <translation>Schrauben der Güte %1 nehmen</translation>
    </message>
    <message>
        <source>Screw the bolts in %1 deep</source>
        <translation>Die Schrauben %1 tief einschrauben</translation>
    </message>
    <message>
        <source>Use legs of grade %1</source>
        <translation>Zugstangen der Güte %1 nehmen</translation>
    </message>
    <message>
        <source>Use a rod of grade %1</source>
        <translation>Eine Stange der Güte %1 nehmen</translation>
    </message>
    <message>
        <source>Use a backing bar %1 thick</source>
        <translation>Einen Gegenhalter von %1 Dicke nehmen</translation>
    </message>
    <message>
        <source>Use %1 jaws</source>
        <translation>%1 Klauen nehmen</translation>
    </message>
    <message>
        <source>Use jaws %1 wide, or a split ring</source>
        <translation>Klauen von %1 Breite nehmen oder einen geteilten Ring</translation>
    </message>
    <message>
        <source>Needed: how many stations. Count the pins</source>
        <translation>Gebraucht wird: wie viele Stationen. Die Bolzen zählen</translation>
    </message>
    <message>
        <source>Needed: the pin circle. Measure over two opposite pins, then take off one pin</source>
        <translation>Gebraucht wird: der Lochkreis. Über zwei gegenüberliegende Bolzen messen, dann einen Bolzen abziehen</translation>
    </message>
    <message>
        <source>Needed: the access hole. Wide enough for the keeper with 3 mm to spare</source>
        <translation>Gebraucht wird: das Montageloch. So weit, dass der Keil mit 3 mm Luft hindurchgeht</translation>
    </message>
    <message>
        <source>Needed: the land, the ring that bears on the retainer. Measure the retainer across</source>
        <translation>Gebraucht wird: die Auflage, der Ring, der auf dem Federteller aufliegt. Den Durchmesser des Federtellers messen</translation>
    </message>
    <message>
        <source>Needed: the retainer. Measure it across</source>
        <translation>Gebraucht wird: der Federteller. Den Durchmesser messen</translation>
    </message>
    <message>
        <source>Needed: the plate&apos;s outline, a disc, bar, rectangle or polygon</source>
        <translation>Gebraucht wird: der Umriss der Platte, Scheibe, Flachstück, Rechteck oder Vieleck</translation>
    </message>
    <message>
        <source>Needed: the disc&apos;s diameter</source>
        <translation>Gebraucht wird: der Durchmesser der Scheibe</translation>
    </message>
    <message>
        <source>Needed: the plate&apos;s length</source>
        <translation>Gebraucht wird: die Länge der Platte</translation>
    </message>
    <message>
        <source>Needed: the plate&apos;s width</source>
        <translation>Gebraucht wird: die Breite der Platte</translation>
    </message>
    <message>
        <source>Needed: the corners of the plate</source>
        <translation>Gebraucht wird: die Ecken der Platte</translation>
    </message>
    <message>
        <source>Needed: the plate&apos;s thickness. Measure clear of the burnt edge, in three places, and take the thinnest</source>
        <translation>Gebraucht wird: die Dicke der Platte. Abseits der Brennkante an drei Stellen messen und die dünnste nehmen</translation>
    </message>
    <message>
        <source>Needed: the bore. A little over the screw&apos;s diameter</source>
        <translation>Gebraucht wird: die Bohrung. Etwas größer als der Durchmesser der Spindel</translation>
    </message>
    <message>
        <source>Needed: the thread in the plate&apos;s bore, the same as the screw&apos;s, M24 or 1-8 for one</source>
        <translation>Gebraucht wird: das Gewinde in der Bohrung der Platte, dasselbe wie das der Spindel, zum Beispiel M24 oder 1-8</translation>
    </message>
    <message>
        <source>Needed: the size of an extra hole</source>
        <translation>Gebraucht wird: die Größe eines Zusatzlochs</translation>
    </message>
    <message>
        <source>Needed: a load. Give the springs, or the load in all</source>
        <translation>Gebraucht wird: eine Last. Die Federn angeben oder die Last insgesamt</translation>
    </message>
    <message>
        <source>Needed: compress or pull</source>
        <translation>Gebraucht wird: zusammendrücken oder abziehen</translation>
    </message>
    <message>
        <source>Needed: the screw&apos;s thread, M20 or 3/4-10. Or how far out the centre bears</source>
        <translation>Gebraucht wird: das Gewinde der Spindel, M20 oder 3/4-10. Oder wie weit außen die Mitte aufliegt</translation>
    </message>
    <message>
        <source>Needed: the springs&apos; forces. Read two lengths on a scale</source>
        <translation>Gebraucht wird: die Federkräfte. Bei zwei Längen auf einer Waage ablesen</translation>
    </message>
    <message>
        <source>at the bore edge</source>
        <translation>am Rand der Bohrung</translation>
    </message>
    <message>
        <source>at the edges of the access holes</source>
        <translation>an den Rändern der Montagelöcher</translation>
    </message>
    <message>
        <source>at the edge of access hole %1</source>
        <translation>am Rand von Montageloch %1</translation>
    </message>
    <message>
        <source>at the edge of extra hole %1</source>
        <translation>am Rand von Zusatzloch %1</translation>
    </message>
    <message>
        <source>at the rim</source>
        <translation>am Außenrand</translation>
    </message>
    <message>
        <source>under the centre bearing</source>
        <translation>unter dem mittleren Auflager</translation>
    </message>
    <message>
        <source>between the holes</source>
        <translation>zwischen den Löchern</translation>
    </message>
    <message>
        <source>1 turn</source>
        <translation>1 Umdrehung</translation>
    </message>
    <message>
        <source>%1 turns</source>
        <translation>%1 Umdrehungen</translation>
    </message>
    <message>
        <source>Look plate and threads over. Oil the thread and the face that turns. Count the keepers in place: %1 stations.</source>
        <translation>Platte und Gewinde durchsehen. Das Gewinde und die drehende Auflagefläche ölen. Die sitzenden Keile zählen: %1 Stationen.</translation>
    </message>
    <message>
        <source>Set the plate on the retainers, every land bearing, nut and washer down by hand. Run a second nut on behind the first as a catch, one turn clear of it.</source>
        <translation>Die Platte auf die Federteller setzen, jede Auflage liegt an, Mutter und Unterlegscheibe von Hand anlegen. Als Fang eine zweite Mutter dahinter aufschrauben, eine Umdrehung Abstand.</translation>
    </message>
    <message>
        <source>Feel the gap round the rim: it must be the same all round, within a feeler of %1. If not, a retainer is stuck: do not go on.</source>
        <translation>Den Spalt am Rand rundum fühlen: er muss überall gleich sein, auf eine Fühlerlehre von %1 genau. Wenn nicht, klemmt ein Federteller: nicht weitermachen.</translation>
    </message>
    <message>
        <source>If one keeper hangs or the gap opens on one side, squeeze again before doing anything else.</source>
        <translation>Bleibt ein Keil hängen oder öffnet sich der Spalt auf einer Seite, vor allem anderen wieder zusammendrücken.</translation>
    </message>
    <message>
        <source>Going together is the same the other way round: keepers counted in, all seated, before the nut comes off.</source>
        <translation>Zusammengebaut wird umgekehrt: Keile hineingezählt, alle sitzen, bevor die Mutter herunterkommt.</translation>
    </message>
    <message>
        <source>Clean shaft and hub, soak the joint with penetrating oil and give it time. Take out set screws, keys that draw, and snap rings.</source>
        <translation>Welle und Nabe reinigen, die Fuge mit Rostlöser tränken und ihm Zeit lassen. Gewindestifte, Nasenkeile und Sicherungsringe herausnehmen.</translation>
    </message>
    <message>
        <source>Leave the shaft&apos;s nut on, backed off by %1 and no more: it catches the hub when it lets go.</source>
        <translation>Die Wellenmutter auf der Welle lassen, um %1 zurückgedreht und nicht mehr: sie fängt die Nabe, wenn sie loslässt.</translation>
    </message>
    <message>
        <source>Stand the ram square on the plate, the rod straight through it, its nut full of thread.</source>
        <translation>Den Zylinder rechtwinklig auf die Platte stellen, die Stange gerade hindurch, ihre Mutter voll auf dem Gewinde.</translation>
    </message>
    <message>
        <source>Oil the screw and its point. Centre the point on the shaft; square, or it walks.</source>
        <translation>Die Spindel und ihre Spitze ölen. Die Spitze auf der Welle zentrieren; rechtwinklig, sonst wandert sie.</translation>
    </message>
    <message>
        <source>Dial from %1 off the middle to the rim, set to nothing.</source>
        <translation>Messuhr von %1 neben der Mitte zum Rand, auf null gestellt.</translation>
    </message>
    <message>
        <source>When it has let go, take the load off before anything is unscrewed. Let hot parts cool in still air; never quench cast iron.</source>
        <translation>Wenn sie losgelassen hat, erst entlasten, dann abschrauben. Heiße Teile an ruhender Luft abkühlen lassen; Guss nie abschrecken.</translation>
    </message>
    <message>
        <source>Screw the stud into the shaft as deep as it goes. Lock it, and mark it across the joint: it must not unscrew while the nut is let up.</source>
        <translation>Die Gewindestange so tief in die Welle schrauben, wie es geht. Sichern und über die Fuge anzeichnen: sie darf sich nicht lösen, während die Mutter abgelassen wird.</translation>
    </message>
    <message>
        <source>Screw the stud into the shaft %1 deep, %2. Lock it, and mark it across the joint: it must not unscrew while the nut is let up.</source>
        <translation>Die Gewindestange %1 tief in die Welle schrauben, %2. Sichern und über die Fuge anzeichnen: sie darf sich nicht lösen, während die Mutter abgelassen wird.</translation>
    </message>
    <message>
        <source>Screw the stud into the shaft %1 deep. Lock it, and mark it across the joint: it must not unscrew while the nut is let up.</source>
        <translation>Die Gewindestange %1 tief in die Welle schrauben. Sichern und über die Fuge anzeichnen: sie darf sich nicht lösen, während die Mutter abgelassen wird.</translation>
    </message>
    <message>
        <source>Stand out of line. Tighten evenly until the retainers begin to move</source>
        <translation>Nicht in der Achse stehen. Gleichmäßig anziehen, bis sich die Federteller bewegen</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, etwa %2</translation>
    </message>
    <message>
        <source>%1; then on until the pack is %2 shorter</source>
        <translation>%1; dann weiter, bis das Paket %2 kürzer ist</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; then on until the keepers are free</source>
        <translation>%1; dann weiter, bis die Keile frei sind</translation>
    </message>
    <message>
        <source>%1; it takes %2</source>
        <translation>%1; das braucht %2</translation>
    </message>
    <message>
        <source>Go by turns and dial, not by torque. Past %1 make sure that the retainers still move with each part of a turn; if they do not, stop.</source>
        <translation>Nach Umdrehungen und Messuhr gehen, nicht nach Drehmoment. Über %1 darauf achten, dass sich die Federteller mit jedem Stück Drehung noch bewegen; tun sie es nicht, aufhören.</translation>
    </message>
    <message>
        <source>Stop at %1, whatever the keepers do.</source>
        <translation>Bei %1 aufhören, was die Keile auch machen.</translation>
    </message>
    <message>
        <source>Take the keepers out of the %1 stations under the plate only, with a pick, no fingers; count them. The others stay in.</source>
        <translation>Die Keile nur aus den %1 Stationen unter der Platte nehmen, mit einem Haken, nicht mit den Fingern; sie zählen. Die anderen bleiben drin.</translation>
    </message>
    <message>
        <source>Take the keepers out through the access holes, a pick, no fingers, opposite stations after one another: %1. Count them: %2 stations, all out before letting up.</source>
        <translation>Die Keile durch die Montagelöcher herausnehmen, mit einem Haken, nicht mit den Fingern, gegenüberliegende Stationen nacheinander: %1. Zählen: %2 Stationen, alle heraus, bevor abgelassen wird.</translation>
    </message>
    <message>
        <source>Take the keepers out through the access holes, a pick, no fingers. Count them: %1 stations, all out before letting up.</source>
        <translation>Die Keile durch die Montagelöcher herausnehmen, mit einem Haken, nicht mit den Fingern. Zählen: %1 Stationen, alle heraus, bevor abgelassen wird.</translation>
    </message>
    <message>
        <source>Let up slowly, a quarter of a turn at a time</source>
        <translation>Langsam ablassen, jeweils eine Viertelumdrehung</translation>
    </message>
    <message>
        <source>%1, over %2, %3 back, until the springs are free</source>
        <translation>%1, über %2, %3 zurück, bis die Federn frei sind</translation>
    </message>
    <message>
        <source>%1, over %2, until the springs are free</source>
        <translation>%1, über %2, bis die Federn frei sind</translation>
    </message>
    <message>
        <source>%1; %2 of thread is then left</source>
        <translation>%1; dann sind noch %2 Gewinde übrig</translation>
    </message>
    <message>
        <source>%1. Watch the mark on the stud and the gap round the rim.</source>
        <translation>%1. Den Strich auf der Gewindestange und den Spalt am Rand beobachten.</translation>
    </message>
    <message>
        <source>Turn the plate to the next stations and do the same, until all are free.</source>
        <translation>Die Platte zu den nächsten Stationen drehen und dasselbe tun, bis alle frei sind.</translation>
    </message>
    <message>
        <source>Bolt the plate to the hub</source>
        <translation>Die Platte an die Nabe schrauben</translation>
    </message>
    <message>
        <source>Bolt the plate to the hub with %1 x %2</source>
        <translation>Die Platte mit %1 x %2 an die Nabe schrauben</translation>
    </message>
    <message>
        <source>%1, %2 deep</source>
        <translation>%1, %2 tief</translation>
    </message>
    <message>
        <source>%1, all down to the same gap, snug and no more.</source>
        <translation>%1, alle auf denselben Spalt, angelegt und nicht mehr.</translation>
    </message>
    <message>
        <source>Set the jaws right under the flange, as close to the hub as they go, all bearing; tie them together.</source>
        <translation>Die Klauen dicht unter den Flansch setzen, so nahe an der Nabe, wie es geht, alle liegen an; zusammenbinden.</translation>
    </message>
    <message>
        <source>Legs square to the strongback and the same length, full nuts, so that it stands level.</source>
        <translation>Zugstangen rechtwinklig zur Traverse und gleich lang, Muttern voll aufgeschraubt, damit sie gerade steht.</translation>
    </message>
    <message>
        <source>Load it in steps, a quarter at a time</source>
        <translation>In Stufen belasten, jeweils ein Viertel</translation>
    </message>
    <message>
        <source>%1: the dial shows %2 at %3 and in proportion</source>
        <translation>%1: die Messuhr zeigt %2 bei %3 und so im Verhältnis</translation>
    </message>
    <message>
        <source>%1. Wait a minute at each, look whether anything has moved or bent.</source>
        <translation>%1. Bei jeder eine Minute warten und nachsehen, ob sich etwas bewegt oder verbogen hat.</translation>
    </message>
    <message>
        <source>Stop at %1 on the wrench: that is %2. No longer wrench, no pipe.</source>
        <translation>Bei %1 am Schlüssel aufhören: das sind %2. Kein längerer Schlüssel, kein Rohr.</translation>
    </message>
    <message>
        <source>Stop at %1. No longer wrench, no pipe.</source>
        <translation>Bei %1 aufhören. Kein längerer Schlüssel, kein Rohr.</translation>
    </message>
    <message>
        <source>Stop at %1 on the ram&apos;s gauge: that is %2.</source>
        <translation>Bei %1 am Manometer des Zylinders aufhören: das sind %2.</translation>
    </message>
    <message>
        <source>Stop the ram at %1.</source>
        <translation>Den Zylinder bei %1 anhalten.</translation>
    </message>
    <message>
        <source>If it does not come: let the load off. Heat the hub alone, evenly and quickly, the shaft kept cold with wet rags: it opens at %1. Load again while it is hot; keep the tool under %2.</source>
        <translation>Kommt sie nicht: entlasten. Nur die Nabe erwärmen, gleichmäßig und schnell, die Welle mit nassen Lappen kalt halten: sie öffnet sich bei %1. Wieder belasten, solange sie heiß ist; das Werkzeug unter %2 halten.</translation>
    </message>
    <message>
        <source>the stations lie %1 off the tool&apos;s holes of %2: %3 does not pass</source>
        <translation>die Stationen liegen %1 neben den Löchern des Werkzeugs von %2: %3 geht nicht hindurch</translation>
    </message>
    <message>
        <source>the stations lie %1 off the tool&apos;s holes of %2</source>
        <translation>die Stationen liegen %1 neben den Löchern des Werkzeugs von %2</translation>
    </message>
    <message>
        <source>the part&apos;s %1 does not pass the tool&apos;s bore of %2</source>
        <translation>%1 des Teils geht nicht durch die Bohrung des Werkzeugs von %2</translation>
    </message>
    <message>
        <source>bolts %1 do not pass the tool&apos;s holes of %2, which lie %3 off</source>
        <translation>Schrauben %1 gehen nicht durch die Löcher des Werkzeugs von %2, die %3 daneben liegen</translation>
    </message>
    <message>
        <source>bolts %1 do not pass the tool&apos;s holes of %2</source>
        <translation>Schrauben %1 gehen nicht durch die Löcher des Werkzeugs von %2</translation>
    </message>
    <message>
        <source>the springs of its own job, which go solid there; the tool itself carries more</source>
        <translation>die Federn seines eigenen Auftrags, die dort auf Block gehen; das Werkzeug selbst trägt mehr</translation>
    </message>
    <message>
        <source>that job pulls, the tool squeezes</source>
        <translation>jener Auftrag zieht ab, das Werkzeug drückt zusammen</translation>
    </message>
    <message>
        <source>that job squeezes, the tool pulls</source>
        <translation>jener Auftrag drückt zusammen, das Werkzeug zieht ab</translation>
    </message>
    <message>
        <source>stations are missing in one of the two jobs</source>
        <translation>in einem der beiden Aufträge fehlen Stationen</translation>
    </message>
    <message>
        <source>the part has %1 stations, the tool %2 holes</source>
        <translation>das Teil hat %1 Stationen, das Werkzeug %2 Löcher</translation>
    </message>
    <message>
        <source>its stations do not come under different holes</source>
        <translation>seine Stationen kommen nicht unter verschiedene Löcher</translation>
    </message>
    <message>
        <source>the stations lie up to %1 off the holes</source>
        <translation>die Stationen liegen bis zu %1 neben den Löchern</translation>
    </message>
    <message>
        <source>not written: the verdict is %1. %2 Add --anyway to write it all the same, marked</source>
        <translation>nicht geschrieben: das Ergebnis ist „%1“. %2 Mit --anyway wird trotzdem geschrieben, gekennzeichnet</translation>
    </message>
    <message>
        <source>not a kind of cut file this version writes; name it like plate.dxf, plate.svg or plate.ngc</source>
        <translation>keine Art Schneiddatei, die diese Version schreibt; nennen wie plate.dxf, plate.svg oder plate.ngc</translation>
    </message>
    <message>
        <source>release 12 is a kind of DXF; name the file like plate.dxf</source>
        <translation>Release 12 ist eine Art DXF; die Datei nennen wie plate.dxf</translation>
    </message>
    <message>
        <source>a drawing at the finished size has no feed and no pierce time; name the file like plate.ngc, or ask for the path</source>
        <translation>eine Zeichnung im Fertigmaß hat weder Vorschub noch Lochstechzeit; die Datei nennen wie plate.ngc oder nach der Bahn fragen</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message numerus="yes">
        <source>%n pierces, %1 of cut, about %2 at a guessed feed and pierce time: set them from the torch&apos;s own chart.</source>
        <translation>
            <numerusform>%n Lochstich, %1 Schnitt, etwa %2 bei geschätztem Vorschub und geschätzter Lochstechzeit: nach der Tabelle des Brenners einstellen.</numerusform>
            <numerusform>%n Lochstiche, %1 Schnitt, etwa %2 bei geschätztem Vorschub und geschätzter Lochstechzeit: nach der Tabelle des Brenners einstellen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pierces, %1 of cut, about %2.</source>
        <translation>
            <numerusform>%n Lochstich, %1 Schnitt, etwa %2.</numerusform>
            <numerusform>%n Lochstiche, %1 Schnitt, etwa %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>To drill: %1, %2.</source>
        <translation>Zu bohren: %1, %2.</translation>
    </message>
    <message>
        <source>To drill: %1, %2, %3.</source>
        <translation>Zu bohren: %1, %2, %3.</translation>
    </message>
    <message>
        <source>Not burned: %1: %2.</source>
        <translation>Nicht gebrannt: %1: %2.</translation>
    </message>
    <message>
        <source>no table runs a hand torch. Say &quot;torch table&quot; or &quot;plasma table&quot;, or write a drawing like plate.dxf</source>
        <translation>kein Tisch fährt einen Handbrenner. „Brennschneidtisch“ oder „Plasmatisch“ angeben oder eine Zeichnung wie plate.dxf schreiben</translation>
    </message>
    <message>
        <source>One plate of %1: cut it %2 times.</source>
        <translation>Eine Platte von %1: %2-mal schneiden.</translation>
    </message>
    <message>
        <source>not a kind of solid this version writes; name it like plate.step</source>
        <translation>keine Art Volumenmodell, die diese Version schreibt; nennen wie plate.step</translation>
    </message>
    <message>
        <source>interference and draw are not used: the fit is held by rust only</source>
        <translation>Übermaß und Aufschub werden nicht gebraucht: der Sitz hält nur durch Rost</translation>
    </message>
    <message>
        <source>what rust alone may ask: no figures give it. State a guess, high rather than low, such as what it took the last time, or what the puller may carry</source>
        <translation>was der Rost allein verlangen kann: das gibt keine Zahl her. Eine Schätzung angeben, eher hoch als niedrig, etwa was es letztes Mal gebraucht hat oder was der Abzieher tragen kann</translation>
    </message>
    <message>
        <source>hub: %1</source>
        <translation>hub: %1</translation>
    </message>
    <message>
        <source>Nothing is that slippery: friction must be at least 0.01, the low end first. Leave it out for 0.10 to 0.35.</source>
        <translation>So glatt ist nichts: die Reibung muss mindestens 0,01 sein, das kleinere Ende zuerst. Für 0,10 bis 0,35 weglassen.</translation>
    </message>
    <message>
        <source>Rust only adds: 1 is clean, 1.5 rusty, 2.5 rusted fast.</source>
        <translation>Rost kommt nur dazu: 1 ist sauber, 1,5 rostig, 2,5 festgerostet.</translation>
    </message>
    <message>
        <source>the diameter of the taper halfway along the fit: half the sum of both ends</source>
        <translation>der Durchmesser des Kegels auf halber Länge des Sitzes: die halbe Summe beider Enden</translation>
    </message>
    <message>
        <source>the diameter of the shaft in the hub: measure it where it comes out</source>
        <translation>der Durchmesser der Welle in der Nabe: messen, wo sie herauskommt</translation>
    </message>
    <message>
        <source>how far hub and shaft touch, along the shaft: the depth of the bore without its recesses</source>
        <translation>wie lang Nabe und Welle sich längs der Welle berühren: die Tiefe der Bohrung ohne ihre Aussparungen</translation>
    </message>
    <message>
        <source>the outside of the hub round the shaft: its boss, not the rim or the flange</source>
        <translation>der Außendurchmesser der Nabe um die Welle: der Nabenkörper, nicht Kranz oder Flansch</translation>
    </message>
    <message>
        <source>the angle of one side to the axis: half the difference of both end diameters over their distance is its tangent (1:10 on the diameter is 2.86 deg)</source>
        <translation>der Winkel einer Seite zur Achse: die halbe Differenz der beiden Enddurchmesser durch ihren Abstand ist sein Tangens (1:10 im Durchmesser sind 2,86 Grad)</translation>
    </message>
    <message>
        <source>how far the hub was pushed up the taper from where it just touches: the manual, or the marks of the nut</source>
        <translation>wie weit die Nabe von der ersten Berührung an auf den Kegel geschoben wurde: Handbuch oder die Spuren der Mutter</translation>
    </message>
    <message>
        <source>how much larger the shaft is than the free bore, on the diameter: the manual, the fit on the drawing, or micrometer and bore gauge on a like pair</source>
        <translation>um wie viel die Welle größer ist als die freie Bohrung, im Durchmesser: Handbuch, die Passung auf der Zeichnung oder Bügelmessschraube und Innenmessgerät an einem gleichen Paar</translation>
    </message>
    <message>
        <source>half angle and draw belong to a taper; the fit is straight, so they are not used</source>
        <translation>halber Winkel und Aufschub gehören zu einem Kegel; der Sitz ist zylindrisch, also werden sie nicht gebraucht</translation>
    </message>
    <message>
        <source>A shaft smaller than its bore does not hold by interference: take 0 for the loose end, the low end first, or say &quot;rust only&quot;.</source>
        <translation>Eine Welle, die kleiner ist als ihre Bohrung, hält nicht durch Übermaß: für das lose Ende 0 nehmen, das kleinere Ende zuerst, oder „nur Rost“ angeben.</translation>
    </message>
    <message>
        <source>The side of a taper stands at more than 0 and at most 45 deg to the axis; at 0 the fit is &quot;straight&quot;.</source>
        <translation>Die Seite eines Kegels steht mehr als 0 und höchstens 45 Grad zur Achse; bei 0 ist der Sitz „zylindrisch“.</translation>
    </message>
    <message>
        <source>The draw is how far the hub went up the taper: 0 or more.</source>
        <translation>Der Aufschub ist, wie weit die Nabe den Kegel hinaufging: 0 oder mehr.</translation>
    </message>
    <message>
        <source>interference %1 from a draw of %2</source>
        <translation>Übermaß %1 aus einem Aufschub von %2</translation>
    </message>
    <message>
        <source>Figures contradict each other: a draw of %1 makes %2 of interference, but %3 is stated; the tighter is taken for the pull.</source>
        <translation>Die Angaben widersprechen sich: ein Aufschub von %1 ergibt %2 Übermaß, angegeben ist aber %3; für den Zug gilt das strammere.</translation>
    </message>
    <message>
        <source>Hub and shaft must touch over some length.</source>
        <translation>Nabe und Welle müssen sich auf einer gewissen Länge berühren.</translation>
    </message>
    <message>
        <source>A diameter is more than 0.</source>
        <translation>Ein Durchmesser ist größer als 0.</translation>
    </message>
    <message>
        <source>The taper runs to a point within the fit: check half angle, length and shaft (the diameter halfway along).</source>
        <translation>Der Kegel läuft innerhalb des Sitzes spitz zu: halben Winkel, Länge und Welle (Durchmesser auf halber Länge) prüfen.</translation>
    </message>
    <message>
        <source>The bore of the shaft must be less than the shaft, %1 at its thin end.</source>
        <translation>Die Bohrung der Welle muss kleiner sein als die Welle, %1 am dünnen Ende.</translation>
    </message>
    <message>
        <source>The hub must be larger than the shaft in it, %1 at its thick end.</source>
        <translation>Die Nabe muss größer sein als die Welle darin, %1 am dicken Ende.</translation>
    </message>
    <message>
        <source>%1 taken as steel</source>
        <translation>%1 als Stahl angenommen</translation>
    </message>
    <message>
        <source>thermal expansion of the %1 taken as steel&apos;s, 12e-6 for each kelvin (EN 1993-1-1)</source>
        <translation>Wärmedehnung (%1) wie Stahl angenommen, 12e-6 je Kelvin (EN 1993-1-1)</translation>
    </message>
    <message>
        <source>shaft taken as solid</source>
        <translation>Welle voll angenommen</translation>
    </message>
    <message>
        <source>shaft diameter %1 taken as that halfway along the taper</source>
        <translation>Wellendurchmesser %1 als der auf halber Länge des Kegels angenommen</translation>
    </message>
    <message>
        <source>friction 0.10 to 0.35 for pulling off (common practice, no published source)</source>
        <translation>Reibung 0,10 bis 0,35 beim Abziehen (übliche Praxis, keine veröffentlichte Quelle)</translation>
    </message>
    <message>
        <source>rust multiplies the friction by %1 (common practice, no published source)</source>
        <translation>Rost vervielfacht die Reibung mit %1 (übliche Praxis, keine veröffentlichte Quelle)</translation>
    </message>
    <message>
        <source>Heated by itself, the hub is free at %1; to slide off by hand it wants %2 of room, %3 at the tightest.</source>
        <translation>Allein erwärmt ist die Nabe bei %1 frei; um von Hand zu gleiten, braucht sie %2 Luft, im strammsten Fall %3.</translation>
    </message>
    <message>
        <source>Heated by itself, the hub is free at %1; to slide off by hand it wants %2 of room, %3 at the tightest. Once the shaft is as hot, nothing is gained.</source>
        <translation>Allein erwärmt ist die Nabe bei %1 frei; um von Hand zu gleiten, braucht sie %2 Luft, im strammsten Fall %3. Ist die Welle erst ebenso heiß, ist nichts gewonnen.</translation>
    </message>
    <message>
        <source>That is hotter than a hub is ever made: heat alone does not free it. Check the interference (on the diameter) or the draw.</source>
        <translation>Das ist heißer, als eine Nabe je gemacht wird: Wärme allein löst sie nicht. Das Übermaß (im Durchmesser) oder den Aufschub prüfen.</translation>
    </message>
    <message>
        <source>hub and shaft both at %1</source>
        <translation>Nabe und Welle beide bei %1</translation>
    </message>
    <message>
        <source>hub at %1, shaft still at %2</source>
        <translation>Nabe bei %1, Welle noch bei %2</translation>
    </message>
    <message>
        <source>hub at %1, shaft still at %2: with a shaft as warm it asks for %3, so pull while the shaft is cold</source>
        <translation>Nabe bei %1, Welle noch bei %2: ist die Welle ebenso warm, verlangt sie %3, also ziehen, solange die Welle kalt ist</translation>
    </message>
    <message>
        <source>At %1 nothing of the interference is left while the shaft is cold.</source>
        <translation>Bei %1 ist vom Übermaß nichts mehr übrig, solange die Welle kalt ist.</translation>
    </message>
    <message>
        <source>tan(half angle) is %1</source>
        <translation>tan(halber Winkel) ist %1</translation>
    </message>
    <message>
        <source>This taper lets go by itself (%1, friction at most %2): stand clear when the nut comes off, and leave it on by a few turns.</source>
        <translation>Dieser Kegel löst sich von selbst (%1, Reibung höchstens %2): zur Seite gehen, wenn die Mutter herunterkommt, und sie noch ein paar Umdrehungen drauflassen.</translation>
    </message>
    <message>
        <source>This taper may let go by itself (%1, friction from %2): leave the nut on by a few turns.</source>
        <translation>Dieser Kegel kann sich von selbst lösen (%1, Reibung ab %2): die Mutter noch ein paar Umdrehungen drauflassen.</translation>
    </message>
    <message>
        <source>A taper lets go all at once: leave the nut on by a few turns.</source>
        <translation>Ein Kegel löst sich auf einmal: die Mutter noch ein paar Umdrehungen drauflassen.</translation>
    </message>
    <message>
        <source>At the tightest the fit asks %1 of the hub (%2, ultimate %3): it may be cracked; look before you pull.</source>
        <translation>Im strammsten Fall verlangt der Sitz der Nabe %1 ab (%2, Zugfestigkeit %3): sie kann gerissen sein; vor dem Ziehen nachsehen.</translation>
    </message>
    <message>
        <source>At the tightest the fit asks %1 of the hub (%2, yield %3): it has given way, so it grips less than these figures say.</source>
        <translation>Im strammsten Fall verlangt der Sitz der Nabe %1 ab (%2, Streckgrenze %3): sie hat nachgegeben, also hält sie weniger fest, als diese Zahlen sagen.</translation>
    </message>
    <message>
        <source>At the tightest the fit asks %1 of the shaft (%2, ultimate %3): it may be cracked; look before you pull.</source>
        <translation>Im strammsten Fall verlangt der Sitz der Welle %1 ab (%2, Zugfestigkeit %3): sie kann gerissen sein; vor dem Ziehen nachsehen.</translation>
    </message>
    <message>
        <source>At the tightest the fit asks %1 of the shaft (%2, yield %3): it has given way, so it grips less than these figures say.</source>
        <translation>Im strammsten Fall verlangt der Sitz der Welle %1 ab (%2, Streckgrenze %3): sie hat nachgegeben, also hält sie weniger fest, als diese Zahlen sagen.</translation>
    </message>
    <message>
        <source>A pull is more than nothing, the low end first.</source>
        <translation>Ein Zug ist mehr als nichts, das kleinere Ende zuerst.</translation>
    </message>
    <message>
        <source>pull of %1 as stated; rust and heat are not counted on top</source>
        <translation>Abziehkraft von %1 wie angegeben; Rost und Wärme kommen nicht noch dazu</translation>
    </message>
    <message>
        <source>pull of %1 as stated</source>
        <translation>Abziehkraft von %1 wie angegeben</translation>
    </message>
    <message>
        <source>The figures of the fit could ask for more than the force stated: %1.</source>
        <translation>Die Maße des Sitzes könnten mehr verlangen als die angegebene Kraft: %1.</translation>
    </message>
    <message>
        <source>Cut on a plasma table, as nothing else was said.</source>
        <translation>Auf dem Plasmatisch geschnitten, da nichts anderes angegeben ist.</translation>
    </message>
    <message>
        <source>The cut is %1 wide, usual for %2.</source>
        <translation>Der Schnitt ist %1 breit, üblich für: %2.</translation>
    </message>
    <message>
        <source>Holes may lie %1 off their place, usual for %2.</source>
        <translation>Löcher können %1 neben ihrem Platz liegen, üblich für: %2.</translation>
    </message>
    <message>
        <source>Holes come out %1 larger on the radius, usual for %2.</source>
        <translation>Löcher werden im Radius %1 größer, üblich für: %2.</translation>
    </message>
    <message>
        <source>The nut is turned, not the screw.</source>
        <translation>Die Mutter wird gedreht, nicht die Spindel.</translation>
    </message>
    <message>
        <source>The screw goes into the shaft&apos;s own thread.</source>
        <translation>Die Spindel geht in das Gewinde der Welle.</translation>
    </message>
    <message>
        <source>Threads and the face that turns are oiled.</source>
        <translation>Gewinde und drehende Auflagefläche sind geölt.</translation>
    </message>
    <message>
        <source>The threads are in good condition.</source>
        <translation>Die Gewinde sind in gutem Zustand.</translation>
    </message>
    <message>
        <source>The plate&apos;s steel was not named: judged as unknown scrap.</source>
        <translation>Der Stahl der Platte ist nicht benannt: als unbekannter Schrott beurteilt.</translation>
    </message>
    <message>
        <source>The land is as wide as the retainer, %1.</source>
        <translation>Die Auflage ist so breit wie der Federteller, %1.</translation>
    </message>
    <message>
        <source>The centre bearing starts at the bore, %1.</source>
        <translation>Das mittlere Auflager beginnt an der Bohrung, %1.</translation>
    </message>
    <message>
        <source>A margin of 2 is wanted, usual for tools like this.</source>
        <translation>Verlangt ist eine Sicherheit von 2, üblich für solche Werkzeuge.</translation>
    </message>
    <message>
        <source>plasma table</source>
        <translation>Plasmatisch</translation>
    </message>
    <message>
        <source>torch table</source>
        <translation>Brennschneidtisch</translation>
    </message>
    <message>
        <source>hand torch</source>
        <translation>Handbrenner</translation>
    </message>
    <message>
        <source>saw and drill</source>
        <translation>Säge und Bohrer</translation>
    </message>
    <message>
        <source>milled</source>
        <translation>gefräst</translation>
    </message>
    <message>
        <source>for instance %1</source>
        <translation>zum Beispiel %1</translation>
    </message>
    <message>
        <source>%1 is out of range; it must be %2</source>
        <translation>%1 liegt außerhalb des Bereichs; erlaubt ist %2</translation>
    </message>
    <message>
        <source>missing; a row needs it as well as its other figures</source>
        <translation>fehlt; eine Reihe braucht es ebenso wie ihre anderen Angaben</translation>
    </message>
    <message>
        <source>must be a group of figures in braces { }, not %1</source>
        <translation>muss eine Gruppe von Angaben in geschweiften Klammern { } sein, nicht %1</translation>
    </message>
    <message>
        <source>must be a list in brackets [ ], not %1</source>
        <translation>muss eine Liste in eckigen Klammern [ ] sein, nicht %1</translation>
    </message>
    <message>
        <source>has %1 entries; at most %2 can be handled</source>
        <translation>hat %1 Einträge; höchstens %2 sind möglich</translation>
    </message>
    <message>
        <source>must be a figure (%1), not %2; %3</source>
        <translation>muss eine Angabe sein (%1), nicht %2; %3</translation>
    </message>
    <message>
        <source>a range has two figures, [low, high]; %1 stand here</source>
        <translation>ein Bereich hat zwei Zahlen, [kleinere, größere]; hier stehen %1</translation>
    </message>
    <message>
        <source>the low end %1 is more than the high end %2; swap them</source>
        <translation>das kleinere Ende %1 ist größer als das größere Ende %2; vertauschen</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>%1, for instance %2</source>
        <translation>%1, zum Beispiel %2</translation>
    </message>
    <message>
        <source>must be a plain number %1, not %2</source>
        <translation>muss eine bloße Zahl sein, %1, nicht %2</translation>
    </message>
    <message>
        <source>must be a whole number, not %1</source>
        <translation>muss eine ganze Zahl sein, nicht %1</translation>
    </message>
    <message>
        <source>must be true or false, not %1</source>
        <translation>muss true oder false sein, nicht %1</translation>
    </message>
    <message>
        <source>entry %1 must be true or false, not %2</source>
        <translation>Eintrag %1 muss true oder false sein, nicht %2</translation>
    </message>
    <message>
        <source>must be text in quotes, not %1</source>
        <translation>muss Text in Anführungszeichen sein, nicht %1</translation>
    </message>
    <message>
        <source>12e-6 (steel&apos;s, for each kelvin)</source>
        <translation>12e-6 (wie Stahl, je Kelvin)</translation>
    </message>
    <message>
        <source>%1 is none of: %2</source>
        <translation>%1 ist keines von: %2</translation>
    </message>
    <message>
        <source>%1 is none of: %2; did you mean &quot;%3&quot;?</source>
        <translation>%1 ist keines von: %2; ist &quot;%3&quot; gemeint?</translation>
    </message>
    <message>
        <source>must be a place [x, y], for instance [&quot;50 mm&quot;, &quot;0 mm&quot;], not %1</source>
        <translation>muss ein Ort [x, y] sein, zum Beispiel [&quot;50 mm&quot;, &quot;0 mm&quot;], nicht %1</translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation>eine Liste von %1</translation>
    </message>
    <message>
        <source>from 0.1 mm to 10 m, for instance 20 mm or 3/4 in</source>
        <translation>von 0,1 mm bis 10 m, zum Beispiel 20 mm oder 3/4 in</translation>
    </message>
    <message>
        <source>from 0 mm to 10 m, for instance 20 mm or 3/4 in</source>
        <translation>von 0 mm bis 10 m, zum Beispiel 20 mm oder 3/4 in</translation>
    </message>
    <message>
        <source>from -10 m to 10 m, for instance 50 mm or -2 in</source>
        <translation>von -10 m bis 10 m, zum Beispiel 50 mm oder -2 in</translation>
    </message>
    <message>
        <source>from 0 mm to 50 mm, for instance 1.5 mm or 1/16 in</source>
        <translation>von 0 mm bis 50 mm, zum Beispiel 1,5 mm oder 1/16 in</translation>
    </message>
    <message>
        <source>from 0.001 N/mm to 10000000 N/mm, for instance 12 N/mm or 68 lb/in</source>
        <translation>von 0,001 N/mm bis 10000000 N/mm, zum Beispiel 12 N/mm oder 68 lb/in</translation>
    </message>
    <message>
        <source>from 0.1 mm2 to 10000000 mm2, for instance 1600 mm2 or 2.5 in2</source>
        <translation>von 0,1 mm2 bis 10000000 mm2, zum Beispiel 1600 mm2 oder 2,5 in2</translation>
    </message>
    <message>
        <source>from 0.01 bar to 100000 bar, for instance 700 bar or 10000 psi</source>
        <translation>von 0,01 bar bis 100000 bar, zum Beispiel 700 bar oder 10000 psi</translation>
    </message>
    <message>
        <source>from 1 MPa to 5000 MPa, for instance 250 MPa or 36 ksi</source>
        <translation>von 1 MPa bis 5000 MPa, zum Beispiel 250 MPa oder 36 ksi</translation>
    </message>
    <message>
        <source>from 1000 MPa to 1000000 MPa, for instance 205 GPa or 29700 ksi</source>
        <translation>von 1000 MPa bis 1000000 MPa, zum Beispiel 205 GPa oder 29700 ksi</translation>
    </message>
    <message>
        <source>from -360 deg to 360 deg, for instance 30 deg</source>
        <translation>von -360 Grad bis 360 Grad, zum Beispiel 30 deg</translation>
    </message>
    <message>
        <source>from -100 C to 1200 C, for instance 20 C or 68 F</source>
        <translation>von -100 C bis 1200 C, zum Beispiel 20 C oder 68 F</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>the file stops in the middle; it seems to be cut short</source>
        <translation>die Datei endet mittendrin; sie ist wohl abgeschnitten</translation>
    </message>
    <message>
        <source>the text is not UTF-8; save the file as UTF-8 text</source>
        <translation>der Text ist kein UTF-8; die Datei als UTF-8-Text speichern</translation>
    </message>
    <message>
        <source>the number is too large</source>
        <translation>die Zahl ist zu groß</translation>
    </message>
    <message>
        <source>a line break or a tab inside quotes; write \n or \t</source>
        <translation>ein Zeilenumbruch oder Tabulator innerhalb von Anführungszeichen; \n oder \t schreiben</translation>
    </message>
    <message>
        <source>a broken \u sequence inside quotes</source>
        <translation>eine kaputte \u-Folge innerhalb von Anführungszeichen</translation>
    </message>
    <message>
        <source>a fraction stands in quotes with its unit, for instance &quot;1/2 in&quot;</source>
        <translation>ein Bruch steht mit seiner Einheit in Anführungszeichen, zum Beispiel &quot;1/2 in&quot;</translation>
    </message>
    <message>
        <source>a comment cannot stand here; write it under &quot;notes&quot;</source>
        <translation>hier kann kein Kommentar stehen; unter &quot;notes&quot; schreiben</translation>
    </message>
    <message>
        <source>NaN and Infinity are no figures; leave the figure out when it is not known</source>
        <translation>NaN und Infinity sind keine Angaben; weglassen, was nicht bekannt ist</translation>
    </message>
    <message>
        <source>a comma too many before %1</source>
        <translation>ein Komma zu viel vor %1</translation>
    </message>
    <message>
        <source>more text after the end of the job; there is a closing brace too many, or two files in one</source>
        <translation>Text nach dem Ende des Auftrags; eine schließende Klammer zu viel, oder zwei Dateien in einer</translation>
    </message>
    <message>
        <source>this is no number; write 0.5 or 12, and put figures with a unit in quotes</source>
        <translation>das ist keine Zahl; 0.5 oder 12 schreiben, und Angaben mit Einheit in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>a comma or a closing bracket is missing before this</source>
        <translation>davor fehlt ein Komma oder eine schließende Klammer</translation>
    </message>
    <message>
        <source>a colon is missing before this</source>
        <translation>davor fehlt ein Doppelpunkt</translation>
    </message>
    <message>
        <source>a key in double quotes should stand here</source>
        <translation>hier sollte ein Schlüssel in Anführungszeichen stehen</translation>
    </message>
    <message>
        <source>a backslash inside quotes must be doubled</source>
        <translation>ein umgekehrter Schrägstrich innerhalb von Anführungszeichen muss doppelt stehen</translation>
    </message>
    <message>
        <source>this is not JSON: check quotes, commas and brackets near here, and put text in quotes</source>
        <translation>das ist kein JSON: Anführungszeichen, Kommas und Klammern hier in der Nähe prüfen, und Text in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>binary data</source>
        <translation>binäre Daten</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; stands twice in one group; take one out</source>
        <translation>der Schlüssel &quot;%1&quot; steht zweimal in einer Gruppe; einen herausnehmen</translation>
    </message>
    <message>
        <source>the number has more digits than can be kept; write it in quotes if it is no figure</source>
        <translation>die Zahl hat mehr Stellen, als sich behalten lassen; in Anführungszeichen setzen, wenn es keine Größe ist</translation>
    </message>
    <message>
        <source>groups nested deeper than %1</source>
        <translation>Gruppen tiefer geschachtelt als %1</translation>
    </message>
    <message>
        <source>larger than 4 MiB; this is no job file</source>
        <translation>größer als 4 MiB; das ist keine Auftragsdatei</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>this is a binary file, not text</source>
        <translation>das ist eine Binärdatei, kein Text</translation>
    </message>
    <message>
        <source>cannot be read as JSON: %1</source>
        <translation>lässt sich nicht als JSON lesen: %1</translation>
    </message>
    <message>
        <source>cannot be read as JSON</source>
        <translation>lässt sich nicht als JSON lesen</translation>
    </message>
    <message>
        <source>has %1 entries for %2 stations; one is needed for each</source>
        <translation>hat %1 Einträge für %2 Stationen; für jede wird einer gebraucht</translation>
    </message>
    <message>
        <source>is more than &quot;%1&quot;: the thread ends there; give the smaller</source>
        <translation>ist mehr als &quot;%1&quot;: dort endet das Gewinde; das kleinere angeben</translation>
    </message>
    <message>
        <source>from 0 mm to 5 mm, for instance 0.05 mm or 2 thou; a loose fit has none: take 0 for its loose end, or the fit &quot;rust only&quot;</source>
        <translation>von 0 mm bis 5 mm, zum Beispiel 0,05 mm oder 2 thou; ein loser Sitz hat keines: für sein loses Ende 0 nehmen oder den Sitz &quot;rust only&quot; (nur Rost)</translation>
    </message>
    <message>
        <source>from 0.01 deg to 45 deg, for instance 3 deg (one side to the axis); without taper the fit is &quot;straight&quot;</source>
        <translation>von 0,01 Grad bis 45 Grad, zum Beispiel 3 Grad (eine Seite zur Achse); ohne Kegel ist der Sitz &quot;straight&quot; (zylindrisch)</translation>
    </message>
    <message>
        <source>0.15; leave it out for 0.10 to 0.35</source>
        <translation>0,15; für 0,10 bis 0,35 weglassen</translation>
    </message>
    <message>
        <source>1 clean, 1.5 rusty, 2.5 rusted fast</source>
        <translation>1 sauber, 1,5 rostig, 2,5 festgerostet</translation>
    </message>
    <message>
        <source>missing; a half angle belongs to a taper: say &quot;taper&quot;, or leave &quot;half_angle&quot; out</source>
        <translation>fehlt; ein halber Winkel gehört zu einem Kegel: &quot;taper&quot; angeben oder &quot;half_angle&quot; weglassen</translation>
    </message>
    <message>
        <source>must be less than &quot;shaft&quot;; are the two swapped?</source>
        <translation>muss kleiner sein als &quot;shaft&quot;; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>the hub must be larger than the shaft in it; are the two swapped?</source>
        <translation>die Nabe muss größer sein als die Welle darin; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>a slot&apos;s length is end to end and no less than its width; are the two swapped?</source>
        <translation>die Länge eines Langlochs geht von Ende zu Ende und ist nicht kleiner als seine Breite; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>is missing; one of: disc, bar, rectangle, polygon</source>
        <translation>fehlt; eines von: disc, bar, rectangle, polygon</translation>
    </message>
    <message>
        <source>a polygon has at least 3 points; %1 stand here</source>
        <translation>ein Vieleck hat mindestens 3 Punkte; hier stehen %1</translation>
    </message>
    <message>
        <source>the radius is more than half the shorter side; make it smaller</source>
        <translation>der Radius ist mehr als die halbe kürzere Seite; kleiner machen</translation>
    </message>
    <message>
        <source>must be less than &quot;bearing_outside&quot;; are the two swapped?</source>
        <translation>muss kleiner sein als &quot;bearing_outside&quot;; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>from 0.001 mm to 50 mm, for instance 0.02 mm or 1 thou</source>
        <translation>von 0,001 mm bis 50 mm, zum Beispiel 0,02 mm oder 1 thou</translation>
    </message>
    <message>
        <source>must be less than &quot;%1&quot;; are the two swapped?</source>
        <translation>muss kleiner sein als &quot;%1&quot;; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>the longer spring pushes harder than the shorter one; check the two readings</source>
        <translation>die längere Feder drückt stärker als die kürzere; beide Ablesungen prüfen</translation>
    </message>
    <message>
        <source>twice the wire is more than &quot;coil_outside&quot;; no such coil can be wound</source>
        <translation>der doppelte Draht ist mehr als &quot;coil_outside&quot;; so lässt sich keine Feder wickeln</translation>
    </message>
    <message>
        <source>must be no more than &quot;total_coils&quot;; are the two swapped?</source>
        <translation>darf nicht mehr sein als &quot;total_coils&quot;; sind die beiden vertauscht?</translation>
    </message>
    <message>
        <source>both &quot;at&quot; and &quot;%1&quot; say where the stations are; take one of them out</source>
        <translation>sowohl &quot;at&quot; als auch &quot;%1&quot; sagen, wo die Stationen sind; eines davon herausnehmen</translation>
    </message>
    <message>
        <source>%1 stations, but &quot;at&quot; lists %2; take &quot;count&quot; out or correct it</source>
        <translation>%1 Stationen, aber &quot;at&quot; nennt %2; &quot;count&quot; herausnehmen oder berichtigen</translation>
    </message>
    <message>
        <source>no station is loaded; at least one must be true</source>
        <translation>keine Station ist belastet; mindestens eine muss true sein</translation>
    </message>
    <message>
        <source>every share is 0; at least one station must carry something</source>
        <translation>jeder Anteil ist 0; mindestens eine Station muss etwas tragen</translation>
    </message>
    <message>
        <source>a job file is a group of figures in braces { }, not %1</source>
        <translation>eine Auftragsdatei ist eine Gruppe von Angaben in geschweiften Klammern { }, nicht %1</translation>
    </message>
    <message>
        <source>this is a rack file, not a job file; name it in a job under &quot;rack&quot;</source>
        <translation>das ist eine Lagerdatei, keine Auftragsdatei; in einem Auftrag unter &quot;rack&quot; nennen</translation>
    </message>
    <message>
        <source>the version is missing; a job file has &quot;platewright&quot;: %1</source>
        <translation>die Version fehlt; eine Auftragsdatei hat &quot;platewright&quot;: %1</translation>
    </message>
    <message>
        <source>made by a newer Platewright, version %1; this one reads %2</source>
        <translation>von einem neueren Platewright gemacht, Version %1; dieses liest %2</translation>
    </message>
    <message>
        <source>%1 is no version of a job file; this one reads %2</source>
        <translation>%1 ist keine Version einer Auftragsdatei; dieses Programm liest %2</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a group</source>
        <translation>eine Gruppe</translation>
    </message>
    <message>
        <source>%1; 1.5 x for hammering</source>
        <translation>%1; 1,5-fach wegen Schlägen</translation>
    </message>
    <message>
        <source>AISC 360 J7, bearing 1.8 x yield (from memory); %1</source>
        <translation>AISC 360 J7, Pressung 1,8 x Streckgrenze (aus dem Gedächtnis); %1</translation>
    </message>
    <message>
        <source>%1 on a ring %2 to %3, %4, against 1.8 x yield %5 (%6)</source>
        <translation>%1 auf einem Ring %2 bis %3, %4, gegen 1,8 x Streckgrenze %5 (%6)</translation>
    </message>
    <message>
        <source>%1 on a spot of %2, %3, against 1.8 x yield %4 (%5)</source>
        <translation>%1 auf einem Fleck von %2, %3, gegen 1,8 x Streckgrenze %4 (%5)</translation>
    </message>
    <message>
        <source>the %1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Backing bar, bending</source>
        <translation>Gegenhalter, Biegung</translation>
    </message>
    <message>
        <source>the backing bar&apos;s span is not given: measure between the two places it rests on</source>
        <translation>die Stützweite des Gegenhalters ist nicht angegeben: zwischen den beiden Auflagestellen messen</translation>
    </message>
    <message>
        <source>the backing bar&apos;s width and thickness are not given: measure them</source>
        <translation>Breite und Dicke des Gegenhalters sind nicht angegeben: messen</translation>
    </message>
    <message>
        <source>the screw&apos;s hole of %1 is as wide as the bar</source>
        <translation>das Loch für die Spindel von %1 ist so breit wie der Gegenhalter</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>Geometrie</translation>
    </message>
    <message>
        <source>(%1 - hole %2)</source>
        <translation>(%1 - Loch %2)</translation>
    </message>
    <message>
        <source>%1 in the middle of %2: F L / 4 = %3 on %4 x %5^2 / 6 = %6 against yield %7 (%8); it bends %9</source>
        <translation>%1 in der Mitte von %2: F L / 4 = %3 auf %4 x %5^2 / 6 = %6 gegen Streckgrenze %7 (%8); er biegt sich %9</translation>
    </message>
    <message>
        <source>beam on two supports, Roark 7th ed. Table 8.1; %1</source>
        <translation>Balken auf zwei Stützen, Roark 7. Aufl. Tabelle 8.1; %1</translation>
    </message>
    <message>
        <source>the backing bar&apos;s steel is not given: taken as unknown scrap</source>
        <translation>der Stahl des Gegenhalters ist nicht angegeben: als unbekannter Schrott angenommen</translation>
    </message>
    <message>
        <source>Pressure on the back</source>
        <translation>Gegenhalter oder Anschlag, Pressung</translation>
    </message>
    <message>
        <source>the forcing screw&apos;s thread is not given, M20 or 3/4-10 for one</source>
        <translation>das Gewinde der Druckspindel ist nicht angegeben, zum Beispiel M20 oder 3/4-10</translation>
    </message>
    <message>
        <source>the shaft&apos;s steel is not given: taken as unknown scrap</source>
        <translation>der Stahl der Welle ist nicht angegeben: als unbekannter Schrott angenommen</translation>
    </message>
    <message>
        <source>Stop bolt&apos;s thread</source>
        <translation>Anschlagschraube, Gewinde</translation>
    </message>
    <message>
        <source>Stop bolt&apos;s pad</source>
        <translation>Anschlagschraube, Kopfauflage</translation>
    </message>
    <message>
        <source>the stop bolt&apos;s thread is not given, M16 or 5/8-11 for one</source>
        <translation>das Gewinde der Anschlagschraube ist nicht angegeben, zum Beispiel M16 oder 5/8-11</translation>
    </message>
    <message>
        <source>a pad of %1 is no wider than the %2 stop bolt and seats on nothing: its thread carries</source>
        <translation>eine Kopfauflage von %1 ist nicht breiter als die Anschlagschraube %2 und sitzt auf nichts: ihr Gewinde trägt</translation>
    </message>
    <message>
        <source>the stop bolt&apos;s grade is not given: taken as the weakest sold</source>
        <translation>die Güte der Anschlagschraube ist nicht angegeben: als die schwächste handelsübliche angenommen</translation>
    </message>
    <message>
        <source>how deep the stop bolt sits in the shaft is not given: count its turns in and multiply by the pitch</source>
        <translation>wie tief die Anschlagschraube in der Welle sitzt, ist nicht angegeben: beim Einschrauben die Umdrehungen zählen und mit der Steigung malnehmen</translation>
    </message>
    <message>
        <source>screwed down onto its pad the thread carries nothing; left standing off it would carry all: %1</source>
        <translation>bis auf die Kopfauflage eingeschraubt trägt das Gewinde nichts; mit Abstand gelassen trüge es alles: %1</translation>
    </message>
    <message>
        <source>stop bolt</source>
        <translation>Anschlagschraube</translation>
    </message>
    <message>
        <source>Screw point on the shaft</source>
        <translation>Spindelspitze auf der Welle</translation>
    </message>
    <message>
        <source>the shaft is bored %1 and the point is %2 across: it has nothing to push on; put a plug or a stop bolt in the shaft&apos;s end</source>
        <translation>die Welle ist mit %1 durchbohrt und die Spitze misst %2: sie hat nichts zum Drücken; einen Stopfen oder eine Anschlagschraube ins Wellenende setzen</translation>
    </message>
    <message>
        <source>Screw, buckling</source>
        <translation>Spindel, Knicken</translation>
    </message>
    <message>
        <source>how long the screw stands free is not given: measure from the plate to the shaft&apos;s end when the pull begins, and add what it must still come</source>
        <translation>wie lang die Spindel frei steht, ist nicht angegeben: beim Beginn des Ziehens von der Platte zum Wellenende messen und dazuzählen, was noch kommen muss</translation>
    </message>
    <message>
        <source>Euler %1</source>
        <translation>Euler %1</translation>
    </message>
    <message>
        <source>Johnson %1</source>
        <translation>Johnson %1</translation>
    </message>
    <message>
        <source>%1, root %2, %3 free, %4 (K = %5): %6 x %7 = %8 against %9</source>
        <translation>%1, Kern %2, %3 frei, %4 (K = %5): %6 x %7 = %8 gegen %9</translation>
    </message>
    <message>
        <source>Shigley 9th ed. eq. (4-43) Euler, (4-48) Johnson; %1</source>
        <translation>Shigley 9. Aufl. Gl. (4-43) Euler, (4-48) Johnson; %1</translation>
    </message>
    <message>
        <source>tapped bore: the force comes in through the thread, taken on a ring from %1 to %2</source>
        <translation>Bohrung mit Gewinde: die Kraft kommt durch das Gewinde herein, angenommen auf einem Ring von %1 bis %2</translation>
    </message>
    <message>
        <source>nut for %1 taken as %2 across flats, 1.5 x diameter</source>
        <translation>Mutter für %1 mit Schlüsselweite %2 angenommen, 1,5 x Durchmesser</translation>
    </message>
    <message>
        <source>washer thickness not given: %1 of %2</source>
        <translation>Dicke der Unterlegscheibe nicht angegeben: %1 nach %2</translation>
    </message>
    <message>
        <source>washer not given: %1 for %2, %3 x %4</source>
        <translation>Unterlegscheibe nicht angegeben: %1 für %2, %3 x %4</translation>
    </message>
    <message>
        <source>centre bearing as stated, %1 to %2</source>
        <translation>mittleres Auflager wie angegeben, %1 bis %2</translation>
    </message>
    <message>
        <source>centre bearing %1 to %2: the washer&apos;s outside</source>
        <translation>mittleres Auflager %1 bis %2: der Außendurchmesser der Scheibe</translation>
    </message>
    <message>
        <source>centre bearing %1 to %2: nut face %3 + 2 x washer %4 (a %5 washer this thin does not reach its rim)</source>
        <translation>mittleres Auflager %1 bis %2: Mutterauflage %3 + 2 x Scheibe %4 (eine so dünne Scheibe von %5 trägt nicht bis zum Rand)</translation>
    </message>
    <message>
        <source>centre bearing %1 to %2: the nut face, no washer</source>
        <translation>mittleres Auflager %1 bis %2: die Mutterauflage, keine Scheibe</translation>
    </message>
    <message>
        <source>Centre bearing</source>
        <translation>Mittleres Auflager</translation>
    </message>
    <message>
        <source>nothing bears: inside %1, outside %2; use a larger or thicker washer</source>
        <translation>nichts liegt auf: innen %1, außen %2; eine größere oder dickere Unterlegscheibe nehmen</translation>
    </message>
    <message>
        <source>%1 on a ring %2 to %3, %4: %5 against 1.8 x yield %6 (%7)</source>
        <translation>%1 auf einem Ring %2 bis %3, %4: %5 gegen 1,8 x Streckgrenze %6 (%7)</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>how wide the bolts bear is not given: measure across the washer under a head or nut</source>
        <translation>wie breit die Schrauben aufliegen, ist nicht angegeben: die Scheibe unter Kopf oder Mutter messen</translation>
    </message>
    <message>
        <source>the retainer&apos;s diameter is not given: measure across the retainer</source>
        <translation>der Durchmesser des Federtellers ist nicht angegeben: quer über den Federteller messen</translation>
    </message>
    <message>
        <source>Land left</source>
        <translation>Auflage, Rest</translation>
    </message>
    <message>
        <source>the access hole&apos;s diameter is not given</source>
        <translation>der Durchmesser des Montagelochs ist nicht angegeben</translation>
    </message>
    <message>
        <source>(land %1 - hole %2) / 2 - layout error %3 - growth %4 by %5 = %6 left, %7 wanted</source>
        <translation>(Auflage %1 - Loch %2) / 2 - Anreißfehler %3 - Aufweitung %4 (%5) = %6 übrig, verlangt %7</translation>
    </message>
    <message>
        <source>Land pressure</source>
        <translation>Auflage, Pressung</translation>
    </message>
    <message>
        <source>the plate&apos;s steel is not known: name a grade, or &quot;unknown scrap&quot;</source>
        <translation>der Stahl der Platte ist nicht bekannt: eine Güte nennen oder „unbekannter Schrott“</translation>
    </message>
    <message>
        <source>%1 on a land %2 to %3, %4, against 1.8 x yield %5 (%6)</source>
        <translation>%1 auf einer Auflage %2 bis %3, %4, gegen 1,8 x Streckgrenze %5 (%6)</translation>
    </message>
    <message>
        <source>Room for keeper</source>
        <translation>Platz für den Keil</translation>
    </message>
    <message>
        <source>the pin of %1 does not pass a hole of %2</source>
        <translation>der Bolzen von %1 geht nicht durch ein Loch von %2</translation>
    </message>
    <message>
        <source>the keeper&apos;s size is not given: measure across the pair of keepers</source>
        <translation>die Größe des Keils ist nicht angegeben: über das Keilpaar messen</translation>
    </message>
    <message>
        <source>hole %1 - keeper %2 = %3, %4 wanted</source>
        <translation>Loch %1 - Keil %2 = %3, verlangt %4</translation>
    </message>
    <message>
        <source>%1; %2 of plate is deeper than a pick reaches through it, about %3</source>
        <translation>%1; %2 Platte ist tiefer, als ein Haken hindurchreicht, etwa %3</translation>
    </message>
    <message>
        <source>Steel left</source>
        <translation>Reststeg</translation>
    </message>
    <message>
        <source>the plate&apos;s outline and holes are not all given</source>
        <translation>Umriss und Löcher der Platte sind nicht alle angegeben</translation>
    </message>
    <message>
        <source>no steel %1</source>
        <translation>kein Stahl %1</translation>
    </message>
    <message>
        <source>%1 %2, %3 wanted (the larger of %4 and half the thickness)</source>
        <translation>%1 %2, verlangt %3 (das größere von %4 und der halben Dicke)</translation>
    </message>
    <message>
        <source>Washer cover</source>
        <translation>Sitz der Scheibe</translation>
    </message>
    <message>
        <source>washer %1</source>
        <translation>Unterlegscheibe %1</translation>
    </message>
    <message>
        <source>nut face %1</source>
        <translation>Mutterauflage %1</translation>
    </message>
    <message>
        <source>bearing %1</source>
        <translation>Auflager %1</translation>
    </message>
    <message>
        <source>%1 does not cover the bore %2: it pulls through</source>
        <translation>%1 deckt die Bohrung %2 nicht: sie wird hindurchgezogen</translation>
    </message>
    <message>
        <source>%1 covers the bore %2 by %3</source>
        <translation>%1 deckt die Bohrung %2 um %3</translation>
    </message>
    <message>
        <source>%1, at least %2 wanted</source>
        <translation>%1, verlangt mindestens %2</translation>
    </message>
    <message>
        <source>%1; the bore is wider than the nut face %2: the washer dishes into it, use a thick one</source>
        <translation>%1; die Bohrung ist weiter als die Mutterauflage %2: die Scheibe wölbt sich hinein, eine dicke nehmen</translation>
    </message>
    <message>
        <source>%1 covers %2 of the access holes; at most %3 goes between them</source>
        <translation>%1 deckt %2 der Montagelöcher zu; höchstens %3 passen dazwischen</translation>
    </message>
    <message>
        <source>%1; %2 clear of the access holes</source>
        <translation>%1; %2 Abstand zu den Montagelöchern</translation>
    </message>
    <message>
        <source>Burn or drill</source>
        <translation>Brennen oder bohren</translation>
    </message>
    <message>
        <source>the plate&apos;s thickness is not given</source>
        <translation>die Dicke der Platte ist nicht angegeben</translation>
    </message>
    <message>
        <source>%1: every hole is drilled</source>
        <translation>%1: jedes Loch wird gebohrt</translation>
    </message>
    <message>
        <source>the bore of %1</source>
        <translation>die Bohrung von %1</translation>
    </message>
    <message>
        <source>the access holes of %1</source>
        <translation>die Montagelöcher von %1</translation>
    </message>
    <message>
        <source>extra hole %2 of %1</source>
        <translation>Zusatzloch %2 von %1</translation>
    </message>
    <message>
        <source>the bore, for its thread</source>
        <translation>die Bohrung, für ihr Gewinde</translation>
    </message>
    <message>
        <source>all can be burned</source>
        <translation>alle lassen sich brennen</translation>
    </message>
    <message>
        <source>drill %1</source>
        <translation>bohren: %1</translation>
    </message>
    <message>
        <source>a %1 burns holes from about %2 in %3 plate: %4</source>
        <translation>%1 brennt Löcher ab etwa %2 in %3 Platte: %4</translation>
    </message>
    <message>
        <source>brittle, 4 and 2 on ultimate: common practice, no published source</source>
        <translation>spröde, 4 und 2 auf Zugfestigkeit: übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>jaws all round, %1</source>
        <translation>Klauen rundum, %1</translation>
    </message>
    <message>
        <source>%1 jaws, %2 each with one slack (common practice)</source>
        <translation>%1 Klauen, je %2, eine lose gerechnet (übliche Praxis)</translation>
    </message>
    <message>
        <source>%1 jaws, %2 each</source>
        <translation>%1 Klauen, je %2</translation>
    </message>
    <message>
        <source>hub.jaws.count: count the jaws that grip the flange</source>
        <translation>hub.jaws.count: die Klauen zählen, die den Flansch greifen</translation>
    </message>
    <message>
        <source>hub.jaws.width: measure across one jaw, along the flange&apos;s rim</source>
        <translation>hub.jaws.width: eine Klaue messen, längs des Flanschrands</translation>
    </message>
    <message>
        <source>hub.jaws.overlap: measure how far a jaw reaches in behind the rim</source>
        <translation>hub.jaws.overlap: messen, wie weit eine Klaue hinter den Rand greift</translation>
    </message>
    <message>
        <source>not given: %1</source>
        <translation>nicht angegeben: %1</translation>
    </message>
    <message>
        <source>%1 to break (%2)</source>
        <translation>%1 bis zum Bruch (%2)</translation>
    </message>
    <message>
        <source>%1 yield (%2)</source>
        <translation>%1 Streckgrenze (%2)</translation>
    </message>
    <message>
        <source>%1: worst stress %2 at the root against %3; wanted %4 x</source>
        <translation>%1: größte Spannung %2 an der Wurzel gegen %3; verlangt %4 x</translation>
    </message>
    <message>
        <source>%1: worst stress %2 under a jaw against %3; wanted %4 x</source>
        <translation>%1: größte Spannung %2 unter einer Klaue gegen %3; verlangt %4 x</translation>
    </message>
    <message>
        <source>%1; not settled, within about %2 %</source>
        <translation>%1; noch nicht genau, auf etwa %2 %</translation>
    </message>
    <message>
        <source>%1; folds at %2 x the load</source>
        <translation>%1; klappt beim %2-Fachen der Last zusammen</translation>
    </message>
    <message>
        <source>%1; carries at least %2 x the load</source>
        <translation>%1; trägt mindestens das %2-Fache der Last</translation>
    </message>
    <message>
        <source>%1; never hammer on a cast flange</source>
        <translation>%1; nie auf einen Gussflansch schlagen</translation>
    </message>
    <message>
        <source>%1; %2; %3</source>
        <translation>%1; %2; %3</translation>
    </message>
    <message>
        <source>annular plate fixed inside, Roark, 7th ed., Table 11.2</source>
        <translation>innen eingespannte Kreisringplatte, Roark, 7. Aufl., Tabelle 11.2</translation>
    </message>
    <message>
        <source>elastic field of the flange clamped at its root, even pressure under each jaw</source>
        <translation>elastisches Feld des an der Wurzel eingespannten Flanschs, gleichmäßiger Druck unter jeder Klaue</translation>
    </message>
    <message>
        <source>ASME BTH-1 category A, 2.0 on yield</source>
        <translation>ASME BTH-1 Kategorie A, 2,0 auf Streckgrenze</translation>
    </message>
    <message>
        <source>%1 on a jaw of %2 x %3, against %4 (%5)</source>
        <translation>%1 auf einer Klaue von %2 x %3, gegen %4 (%5)</translation>
    </message>
    <message>
        <source>ultimate %1</source>
        <translation>Zugfestigkeit %1</translation>
    </message>
    <message>
        <source>1.8 x yield %1</source>
        <translation>1,8 x Streckgrenze %1</translation>
    </message>
    <message>
        <source>AISC 360 J7, bearing 1.8 x yield (from memory)</source>
        <translation>AISC 360 J7, Pressung 1,8 x Streckgrenze (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Flange, shear round a jaw</source>
        <translation>Flansch, Abscheren um eine Klaue</translation>
    </message>
    <message>
        <source>%1 on %2 round a jaw, against %3 (%4)</source>
        <translation>%1 auf %2 um eine Klaue, gegen %3 (%4)</translation>
    </message>
    <message>
        <source>%1 on %2 of the root, against %3 (%4)</source>
        <translation>%1 auf %2 der Wurzel, gegen %3 (%4)</translation>
    </message>
    <message>
        <source>0.6 x yield %1</source>
        <translation>0,6 x Streckgrenze %1</translation>
    </message>
    <message>
        <source>AISC 360 J4, shear 0.6 x yield (from memory)</source>
        <translation>AISC 360 J4, Schub 0,6 x Streckgrenze (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>hub.flange.outside: measure across the flange&apos;s rim</source>
        <translation>hub.flange.outside: den Durchmesser des Flanschrands messen</translation>
    </message>
    <message>
        <source>hub.flange.root: measure across the hub right behind the flange</source>
        <translation>hub.flange.root: die Nabe dicht hinter dem Flansch messen</translation>
    </message>
    <message>
        <source>hub.flange.thickness: measure at the root, where it is loaded</source>
        <translation>hub.flange.thickness: an der Wurzel messen, wo er belastet wird</translation>
    </message>
    <message>
        <source>no load: give the springs&apos; forces, or the load in all</source>
        <translation>keine Last: die Federkräfte angeben oder die Last insgesamt</translation>
    </message>
    <message>
        <source>the screw&apos;s grade is not known: read the marks on its head or end</source>
        <translation>die Güte der Spindel ist nicht bekannt: die Zeichen auf Kopf oder Ende ablesen</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>the tool stands on jaws or legs that can sway</source>
        <translation>das Werkzeug steht auf Klauen oder Zugstangen, die ausweichen können</translation>
    </message>
    <message>
        <source>the plate is bolted to the part</source>
        <translation>die Platte ist mit dem Teil verschraubt</translation>
    </message>
    <message>
        <source>Nut thread</source>
        <translation>Muttergewinde</translation>
    </message>
    <message>
        <source>the grade of screw or nut is not known: read the marks on them</source>
        <translation>die Güte von Spindel oder Mutter ist nicht bekannt: die Zeichen darauf ablesen</translation>
    </message>
    <message>
        <source>the nut&apos;s height is not given: measure it</source>
        <translation>die Höhe der Mutter ist nicht angegeben: messen</translation>
    </message>
    <message>
        <source>Shaft thread</source>
        <translation>Gewinde in der Welle</translation>
    </message>
    <message>
        <source>Bar thread</source>
        <translation>Gewinde im Gegenhalter</translation>
    </message>
    <message>
        <source>Plate thread</source>
        <translation>Gewinde in der Platte</translation>
    </message>
    <message>
        <source>the steel the screw goes into is not known: name a grade, or &quot;unknown scrap&quot;</source>
        <translation>der Stahl, in den die Spindel geht, ist nicht bekannt: eine Güte nennen oder „unbekannter Schrott“</translation>
    </message>
    <message>
        <source>how deep the screw sits in its thread is not given: count its turns in and multiply by the pitch</source>
        <translation>wie tief die Spindel in ihrem Gewinde sitzt, ist nicht angegeben: beim Einschrauben die Umdrehungen zählen und mit der Steigung malnehmen</translation>
    </message>
    <message>
        <source>measure the ram&apos;s foot across: centre.bearing_outside</source>
        <translation>den Fuß des Zylinders messen: centre.bearing_outside</translation>
    </message>
    <message>
        <source>Thread left</source>
        <translation>Gewinde übrig</translation>
    </message>
    <message>
        <source>Hammering</source>
        <translation>Schläge</translation>
    </message>
    <message>
        <source>a ram is loaded: its seals and rod do not take blows</source>
        <translation>ein Zylinder steht unter Last: Dichtungen und Stange vertragen keine Schläge</translation>
    </message>
    <message>
        <source>the plate is brittle: it cracks under a blow</source>
        <translation>die Platte ist spröde: sie reißt unter einem Schlag</translation>
    </message>
    <message>
        <source>the flange the jaws hold is cast: it cracks under a blow</source>
        <translation>der Flansch, den die Klauen halten, ist gegossen: er reißt unter einem Schlag</translation>
    </message>
    <message>
        <source>blows count 1.5 x the load on screw, point and plate</source>
        <translation>Schläge zählen als 1,5-fache Last auf Spindel, Spitze und Platte</translation>
    </message>
    <message>
        <source>%1. Do not hammer</source>
        <translation>%1. Nicht schlagen</translation>
    </message>
    <message>
        <source>%1 does not go into a bore tapped %2; give both the same thread</source>
        <translation>%1 passt nicht in eine Bohrung mit Gewinde %2; beiden dasselbe Gewinde geben</translation>
    </message>
    <message>
        <source>screw grade not given: taken as the weakest sold</source>
        <translation>Güte der Spindel nicht angegeben: als die schwächste handelsübliche angenommen</translation>
    </message>
    <message>
        <source>nut grade not given: taken as the weakest sold</source>
        <translation>Güte der Mutter nicht angegeben: als die schwächste handelsübliche angenommen</translation>
    </message>
    <message>
        <source>steel the screw goes into not given: taken as unknown scrap</source>
        <translation>der Stahl, in den die Spindel geht, ist nicht angegeben: als unbekannter Schrott angenommen</translation>
    </message>
    <message>
        <source>the hand pulls the wrench with %1, a strong one-handed pull (common practice)</source>
        <translation>die Hand zieht mit %1 am Schlüssel, ein kräftiger Zug mit einem Arm (übliche Praxis)</translation>
    </message>
    <message>
        <source>the ram makes its capacity of %1; its relief pressure and area were not both given</source>
        <translation>der Zylinder bringt seine volle Kraft von %1; Überdruckventil und Fläche sind nicht beide angegeben</translation>
    </message>
    <message>
        <source>Ram</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>neither the ram&apos;s capacity nor its area and relief pressure are given: read its plate</source>
        <translation>weder die Kraft des Zylinders noch Fläche und Überdruckventil sind angegeben: sein Typenschild lesen</translation>
    </message>
    <message>
        <source>capacity %1</source>
        <translation>Kraft %1</translation>
    </message>
    <message>
        <source>%1, capacity %2</source>
        <translation>%1, Kraft %2</translation>
    </message>
    <message>
        <source>%1: the relief pressure drives the ram past its capacity; set the valve lower</source>
        <translation>%1: das Überdruckventil treibt den Zylinder über seine Kraft; das Ventil niedriger stellen</translation>
    </message>
    <message>
        <source>%1 of the %2 designed for: the ram stalls before the tool is at its load</source>
        <translation>%1 von %2 der Auslegung: der Zylinder bleibt stehen, bevor das Werkzeug seine Last hat</translation>
    </message>
    <message>
        <source>pressure x area; the ram&apos;s own plate</source>
        <translation>Druck x Fläche; das Typenschild des Zylinders</translation>
    </message>
    <message>
        <source>Ram&apos;s rod</source>
        <translation>Stange im Zylinder</translation>
    </message>
    <message>
        <source>the rod through the ram is not given: its thread, M24 or 1-8 for one, and its grade</source>
        <translation>die Stange durch den Zylinder ist nicht angegeben: ihr Gewinde, zum Beispiel M24 oder 1-8, und ihre Güte</translation>
    </message>
    <message>
        <source>grade of the ram&apos;s rod not given: taken as the weakest sold</source>
        <translation>Güte der Zylinderstange nicht angegeben: als die schwächste handelsübliche angenommen</translation>
    </message>
    <message>
        <source>%1: %2 against yield %3 x %4 = %5 (%6)</source>
        <translation>%1: %2 gegen Streckgrenze %3 x %4 = %5 (%6)</translation>
    </message>
    <message>
        <source>stress area ASME B1.1 / ISO 898-1; %1</source>
        <translation>Spannungsquerschnitt ASME B1.1 / ISO 898-1; %1</translation>
    </message>
    <message>
        <source>Ram&apos;s stroke</source>
        <translation>Hub des Zylinders</translation>
    </message>
    <message>
        <source>one stroke of %1 draws the hub off its %2 seat</source>
        <translation>ein Hub von %1 zieht die Nabe von ihrem Sitz von %2</translation>
    </message>
    <message>
        <source>the hub sits on %1, the stroke is %2: let down and pack up in between</source>
        <translation>die Nabe sitzt auf %1, der Hub ist %2: zwischendurch ablassen und unterbauen</translation>
    </message>
    <message>
        <source>Room to stop</source>
        <translation>Spielraum zum Aufhören</translation>
    </message>
    <message>
        <source>Wrench</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>a stamp of %1 lies outside %2 (the load) to %3 (the rated load); %4 is taken</source>
        <translation>eine Einprägung von %1 liegt außerhalb von %2 (Last) bis %3 (Nennlast); genommen wird %4</translation>
    </message>
    <message>
        <source>proof of %1 would drive the springs solid: prove the tool on solid packing</source>
        <translation>eine Prüflast von %1 drückt die Federn auf Block: das Werkzeug auf festen Unterlagen prüfen</translation>
    </message>
    <message>
        <source>proof of %1 is more than the ram makes, %2: prove the tool in a press or with a larger ram</source>
        <translation>eine Prüflast von %1 ist mehr, als der Zylinder schafft, %2: das Werkzeug in einer Presse oder mit einem größeren Zylinder prüfen</translation>
    </message>
    <message>
        <source>the rated load %1 is under the load of the job %2: no stamp</source>
        <translation>die Nennlast %1 liegt unter der Last des Auftrags %2: keine Einprägung</translation>
    </message>
    <message>
        <source>the screw&apos;s thread is not given</source>
        <translation>das Gewinde der Spindel ist nicht angegeben</translation>
    </message>
    <message>
        <source>no load, so no torque: give the springs&apos; forces or the load in all</source>
        <translation>keine Last, also kein Drehmoment: die Federkräfte oder die Last insgesamt angeben</translation>
    </message>
    <message>
        <source>%1 may need %2 (%3); stop at %4, which is %5 when it runs easily</source>
        <translation>%1 kann %2 brauchen (%3); bei %4 aufhören, das sind %5, wenn es leicht läuft</translation>
    </message>
    <message>
        <source>%1: stop by turns and dial, not by torque</source>
        <translation>%1: nach Umdrehungen und Messuhr aufhören, nicht nach Drehmoment</translation>
    </message>
    <message>
        <source>%1; K %2 to %3</source>
        <translation>%1; K %2 bis %3</translation>
    </message>
    <message>
        <source>power-screw equation, Shigley 9th ed. ch. 8; friction classes of VDI 2230-1 (from memory)</source>
        <translation>Gleichung der Bewegungsschraube, Shigley 9. Aufl. Kap. 8; Reibungszahlklassen nach VDI 2230-1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>the wrench&apos;s length is not given: measure to the middle of the hand</source>
        <translation>die Länge des Schlüssels ist nicht angegeben: bis zur Mitte der Hand messen</translation>
    </message>
    <message>
        <source>how hard you pull the wrench is not given: 250 N, 55 lbf, is a firm pull</source>
        <translation>wie stark am Schlüssel gezogen wird, ist nicht angegeben: 250 N, 55 lbf, sind ein fester Zug</translation>
    </message>
    <message>
        <source>nothing to hold it against: no strength check could be made</source>
        <translation>nichts, wogegen es zu halten wäre: es ließ sich keine Festigkeit prüfen</translation>
    </message>
    <message>
        <source>%1 at the end of a wrench of %2, %3, can make %4; the first to go is the %5 at %6</source>
        <translation>%1 am Ende eines Schlüssels von %2, %3, können %4 erzeugen; zuerst gibt nach: %5 bei %6</translation>
    </message>
    <message>
        <source>%1; from where the retainers start to move, stop at %2 turns</source>
        <translation>%1; von da an, wo sich die Federteller bewegen, nach %2 Umdrehungen aufhören</translation>
    </message>
    <message>
        <source>%1; stop by turns and dial</source>
        <translation>%1; nach Umdrehungen und Messuhr aufhören</translation>
    </message>
    <message>
        <source>power-screw equation at low friction, Shigley 9th ed. ch. 8</source>
        <translation>Gleichung der Bewegungsschraube bei kleiner Reibung, Shigley 9. Aufl. Kap. 8</translation>
    </message>
    <message>
        <source>, 0.75 of it for a worn thread</source>
        <translation>, davon 0,75 für ein abgenutztes Gewinde</translation>
    </message>
    <message>
        <source>, 0.75 of it for a rusty thread</source>
        <translation>, davon 0,75 für ein rostiges Gewinde</translation>
    </message>
    <message>
        <source>, half of it for a damaged thread</source>
        <translation>, davon die Hälfte für ein beschädigtes Gewinde</translation>
    </message>
    <message>
        <source>%1: %2 x 1.5 for hammering on %3 = %4 of thrust</source>
        <translation>%1: %2 x 1,5 für Schläge auf %3 = %4 Druck</translation>
    </message>
    <message>
        <source>%1: %2 x 1.5 for hammering on %3 = %4</source>
        <translation>%1: %2 x 1,5 für Schläge auf %3 = %4</translation>
    </message>
    <message>
        <source>%1: %2 on %3 = %4 of thrust</source>
        <translation>%1: %2 auf %3 = %4 Druck</translation>
    </message>
    <message>
        <source>%1: %2 on %3 = %4</source>
        <translation>%1: %2 auf %3 = %4</translation>
    </message>
    <message>
        <source>%1, bending %2 = %3</source>
        <translation>%1, Biegung %2 = %3</translation>
    </message>
    <message>
        <source>%1, twist %2 at friction %3</source>
        <translation>%1, Verdrehung %2 bei Reibung %3</translation>
    </message>
    <message>
        <source>%1, together %2 against yield %3 (%4)</source>
        <translation>%1, zusammen %2 gegen Streckgrenze %3 (%4)</translation>
    </message>
    <message>
        <source>stress area ASME B1.1 / ISO 898-1, von Mises, Shigley 9th ed. ch. 8; %1</source>
        <translation>Spannungsquerschnitt ASME B1.1 / ISO 898-1, von Mises, Shigley 9. Aufl. Kap. 8; %1</translation>
    </message>
    <message>
        <source>Screw, one station hung</source>
        <translation>Spindel, eine Station hängt</translation>
    </message>
    <message>
        <source>station %1 hangs: %2</source>
        <translation>Station %1 hängt: %2</translation>
    </message>
    <message>
        <source>%1, bending counted / 1.7 (a round bar&apos;s full plastic moment)</source>
        <translation>%1, Biegung durch 1,7 gerechnet (volles plastisches Moment eines Rundstabs)</translation>
    </message>
    <message>
        <source>von Mises, Shigley 9th ed. ch. 8; shape factor Roark 7th ed. Table A.1; %1</source>
        <translation>von Mises, Shigley 9. Aufl. Kap. 8; Formfaktor Roark 7. Aufl. Tabelle A.1; %1</translation>
    </message>
    <message>
        <source>the screw&apos;s threads strip first, %1 x half of %2 (%3)</source>
        <translation>das Gewinde der Spindel reißt zuerst aus, %1 x Hälfte von %2 (%3)</translation>
    </message>
    <message>
        <source>nut %1, proof %2 x %3 x %4 / %5 of height</source>
        <translation>Mutter %1, Prüfspannung %2 x %3 x %4 / %5 der Höhe</translation>
    </message>
    <message>
        <source>nut %1, proof %2 x %3</source>
        <translation>Mutter %1, Prüfspannung %2 x %3</translation>
    </message>
    <message>
        <source>the inside threads strip first, %1 x half of %2 (%3)</source>
        <translation>das Innengewinde reißt zuerst aus, %1 x Hälfte von %2 (%3)</translation>
    </message>
    <message>
        <source>%1, %2 engaged: %3%4 = %5 against %6</source>
        <translation>%1, %2 im Eingriff: %3%4 = %5 gegen %6</translation>
    </message>
    <message>
        <source>ASME B1.1, FED-STD-H28 shear areas, half the ultimate in shear (from memory); %1</source>
        <translation>ASME B1.1, FED-STD-H28 Scherflächen, halbe Zugfestigkeit auf Schub (aus dem Gedächtnis); %1</translation>
    </message>
    <message>
        <source>screw taken as %1</source>
        <translation>Spindel als %1 angenommen</translation>
    </message>
    <message>
        <source>screw point taken as %1 across, its root</source>
        <translation>Spindelspitze mit %1 Durchmesser angenommen, dem Gewindekern</translation>
    </message>
    <message>
        <source>a tool at %1 keeps %2 of its yield before it sets, %3 before it folds and %4 of its stiffness (%5)</source>
        <translation>ein Werkzeug bei %1 behält %2 seiner Streckgrenze bis zur bleibenden Verformung, %3 bis zum Zusammenklappen und %4 seiner Steifigkeit (%5)</translation>
    </message>
    <message>
        <source>quenched or work-hardened steel loses more than that, and for good: do not heat this plate</source>
        <translation>vergüteter oder kaltverfestigter Stahl verliert mehr als das, und für immer: diese Platte nicht erwärmen</translation>
    </message>
    <message>
        <source>grade of the %1 not given: taken as the weakest sold</source>
        <translation>Güte nicht angegeben (%1): als die schwächste handelsübliche angenommen</translation>
    </message>
    <message>
        <source>, %1 of it left hot (EN 1993-1-2 Annex D)</source>
        <translation>, davon %1 in der Wärme übrig (EN 1993-1-2 Anhang D)</translation>
    </message>
    <message>
        <source>stress area ASME B1.1 / ISO 898-1; uneven share: common practice, no published source; %1</source>
        <translation>Spannungsquerschnitt ASME B1.1 / ISO 898-1; ungleicher Anteil: übliche Praxis, keine veröffentlichte Quelle; %1</translation>
    </message>
    <message>
        <source>Bolts to the hub&apos;s rim</source>
        <translation>Schrauben zum Nabenrand</translation>
    </message>
    <message>
        <source>from a bolt&apos;s middle to the hub&apos;s rim: %1 / 2 - %2 = %3, wanted 1.25 x %4 = %5</source>
        <translation>von der Schraubenmitte zum Nabenrand: %1 / 2 - %2 = %3, verlangt 1,25 x %4 = %5</translation>
    </message>
    <message>
        <source>AISC 360 Table J3.4, least edge distance (from memory)</source>
        <translation>AISC 360 Tabelle J3.4, kleinster Randabstand (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Room for the %1</source>
        <translation>Platz: %1</translation>
    </message>
    <message>
        <source>%1 through a hole of %2: %3</source>
        <translation>%1 durch ein Loch von %2: %3</translation>
    </message>
    <message>
        <source>does not pass</source>
        <translation>geht nicht hindurch</translation>
    </message>
    <message>
        <source>%1 of room, %2 wanted</source>
        <translation>%1 Luft, verlangt %2</translation>
    </message>
    <message>
        <source>clearance of ISO 273, fine (from memory)</source>
        <translation>Durchgangsloch nach ISO 273, fein (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>0.6 of it, two %1 never share evenly</source>
        <translation>0,6 davon, zwei (%1) teilen nie gleich</translation>
    </message>
    <message>
        <source>1/%1 of it, one of the %2 slack</source>
        <translation>1/%1 davon, von %2 ist eine lose</translation>
    </message>
    <message>
        <source>Puller bolts</source>
        <translation>Abzieherschrauben</translation>
    </message>
    <message>
        <source>Bolt threads in the hub</source>
        <translation>Gewinde in der Nabe</translation>
    </message>
    <message>
        <source>how many bolts go into the hub is not given: count them</source>
        <translation>wie viele Schrauben in die Nabe gehen, ist nicht angegeben: zählen</translation>
    </message>
    <message>
        <source>the puller bolts&apos; thread is not given, M12 or 1/2-13 for one: try a screw in the hub&apos;s holes</source>
        <translation>das Gewinde der Abzieherschrauben ist nicht angegeben, zum Beispiel M12 oder 1/2-13: eine Schraube in den Löchern der Nabe probieren</translation>
    </message>
    <message>
        <source>the puller bolts&apos; grade is not known: read the marks on their heads</source>
        <translation>die Güte der Abzieherschrauben ist nicht bekannt: die Zeichen auf den Köpfen ablesen</translation>
    </message>
    <message>
        <source>the hub&apos;s material is not given: taken as plain cast iron</source>
        <translation>der Werkstoff der Nabe ist nicht angegeben: als einfaches Gusseisen angenommen</translation>
    </message>
    <message>
        <source>how deep the bolts go into the hub is not given: count their turns in and multiply by the pitch</source>
        <translation>wie tief die Schrauben in die Nabe gehen, ist nicht angegeben: beim Einschrauben die Umdrehungen zählen und mit der Steigung malnehmen</translation>
    </message>
    <message>
        <source>bolts</source>
        <translation>Schrauben</translation>
    </message>
    <message>
        <source>Legs, their nuts on the plate</source>
        <translation>Zugstangen, ihre Muttern auf der Platte</translation>
    </message>
    <message>
        <source>the leg&apos;s nut and washer, %1, fall through the hole of %2: use a larger, thicker washer</source>
        <translation>Mutter und Scheibe der Zugstange, %1, fallen durch das Loch von %2: eine größere, dickere Scheibe nehmen</translation>
    </message>
    <message>
        <source>Strongback as a beam</source>
        <translation>Traverse als Balken</translation>
    </message>
    <message>
        <source>the bore %1 is as wide as the bar %2</source>
        <translation>die Bohrung %1 ist so breit wie die Traverse %2</translation>
    </message>
    <message>
        <source>(%1 - %2) x %3^2 / 6 of %4 loose bars</source>
        <translation>(%1 - %2) x %3^2 / 6 von %4 losen Stäben</translation>
    </message>
    <message>
        <source>(%1 - %2) x %3^2 / 6</source>
        <translation>(%1 - %2) x %3^2 / 6</translation>
    </message>
    <message>
        <source>%1 in the middle of %2: F L / 4 = %3 on %4 = %5 against yield %6 (%7)</source>
        <translation>%1 in der Mitte von %2: F L / 4 = %3 auf %4 = %5 gegen Streckgrenze %6 (%7)</translation>
    </message>
    <message>
        <source>the strongback stands on two legs</source>
        <translation>die Traverse steht auf zwei Zugstangen</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Zugstangen</translation>
    </message>
    <message>
        <source>the legs&apos; thread is not given, M16 or 5/8-11 for one: measure across and count the pitch</source>
        <translation>das Gewinde der Zugstangen ist nicht angegeben, zum Beispiel M16 oder 5/8-11: Durchmesser messen und Steigung zählen</translation>
    </message>
    <message>
        <source>the legs&apos; grade is not known: read the marks on their ends</source>
        <translation>die Güte der Zugstangen ist nicht bekannt: die Zeichen auf den Enden ablesen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>friction %1 in the thread, %2 under what turns</source>
        <translation>Reibung %1 im Gewinde, %2 unter dem, was sich dreht</translation>
    </message>
    <message>
        <source>%1, friction %2</source>
        <translation>%1, Reibung %2</translation>
    </message>
    <message>
        <source>Off the pins</source>
        <translation>Von den Bolzen</translation>
    </message>
    <message>
        <source>how far the springs open is not known: give one spring&apos;s free length, or two readings</source>
        <translation>wie weit sich die Federn öffnen, ist nicht bekannt: die ungespannte Länge einer Feder angeben oder zwei Ablesungen</translation>
    </message>
    <message>
        <source>the standoff is not given: measure from the face the screw enters to the retainers&apos; faces, springs assembled</source>
        <translation>der Abstand ist nicht angegeben: von der Fläche, in die die Spindel geht, zu den Federtellern messen, Federn eingebaut</translation>
    </message>
    <message>
        <source>how deep the screw sits in its thread is not given: count its turns out and multiply by the pitch; at least %1 is needed</source>
        <translation>wie tief die Spindel in ihrem Gewinde sitzt, ist nicht angegeben: beim Herausschrauben die Umdrehungen zählen und mit der Steigung malnehmen; mindestens %1 werden gebraucht</translation>
    </message>
    <message>
        <source>the screw&apos;s usable length is not given: measure the thread from the face it enters to its free tip; at least %1 is needed</source>
        <translation>die nutzbare Länge der Spindel ist nicht angegeben: das Gewinde von der Fläche, in die sie geht, bis zur freien Spitze messen; mindestens %1 werden gebraucht</translation>
    </message>
    <message>
        <source>one diameter engaged until the springs are free, two pitches to spare: common practice, no published source</source>
        <translation>ein Durchmesser im Eingriff, bis die Federn frei sind, zwei Steigungen Vorrat: übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>%1 too short; the screw lets go while the springs still push</source>
        <translation>%1 zu kurz; die Spindel lässt los, während die Federn noch drücken</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>free after %1: standoff %2 - squeeze %3 + travel %1 + plate %4 + washer %5 + nut %6 = %7 of %8 thread: %9</source>
        <translation>frei nach %1: Abstand %2 - Zusammendrücken %3 + Weg %1 + Platte %4 + Scheibe %5 + Mutter %6 = %7 von %8 Gewinde: %9</translation>
    </message>
    <message>
        <source>free after %1: thread past the face %2 + squeeze %3 - travel %1, of which %4 must stay: %5</source>
        <translation>frei nach %1: Gewinde über die Fläche hinaus %2 + Zusammendrücken %3 - Weg %1, davon müssen %4 bleiben: %5</translation>
    </message>
    <message>
        <source>free after %1: engaged %2 + squeeze %3 - travel %1, of which %4 must stay: %5</source>
        <translation>frei nach %1: im Eingriff %2 + Zusammendrücken %3 - Weg %1, davon müssen %4 bleiben: %5</translation>
    </message>
    <message>
        <source>%1; %2 of thread is needed</source>
        <translation>%1; gebraucht werden %2 Gewinde</translation>
    </message>
    <message>
        <source>%1; %2 of engagement is needed</source>
        <translation>%1; gebraucht werden %2 Eingriff</translation>
    </message>
    <message>
        <source>%1; squeezed, the thread runs onto the plain shank %2 too early: pack it with washers or cut more thread</source>
        <translation>%1; zusammengedrückt läuft das Gewinde %2 zu früh auf den glatten Schaft: mit Scheiben unterlegen oder mehr Gewinde schneiden</translation>
    </message>
    <message>
        <source>%1; squeezed, only %2 of thread is left to the plain shank</source>
        <translation>%1; zusammengedrückt bleiben nur %2 Gewinde bis zum glatten Schaft</translation>
    </message>
    <message>
        <source>how far the pins stand beyond the retainers is not given: measure it, assembled</source>
        <translation>wie weit die Bolzen über die Federteller stehen, ist nicht angegeben: im eingebauten Zustand messen</translation>
    </message>
    <message>
        <source>the springs&apos; figures are not given: a length assembled and a force, at least</source>
        <translation>die Angaben zu den Federn fehlen: mindestens eine Einbaulänge und eine Kraft</translation>
    </message>
    <message>
        <source>the springs&apos; own figures</source>
        <translation>die Angaben der Federn</translation>
    </message>
    <message>
        <source>letting up, the retainer leaves its pin after %1 with %2 of %3 still behind it: keep the plate square and hands away until the springs are free</source>
        <translation>beim Ablassen verlässt der Federteller seinen Bolzen nach %1, mit noch %2 von %3 dahinter: die Platte gerade und die Hände weg halten, bis die Federn frei sind</translation>
    </message>
    <message>
        <source>letting up, the retainer leaves its pin after %1 with next to nothing behind it</source>
        <translation>beim Ablassen verlässt der Federteller seinen Bolzen nach %1, mit so gut wie nichts mehr dahinter</translation>
    </message>
    <message>
        <source>Known are %1</source>
        <translation>Bekannt sind %1</translation>
    </message>
    <message>
        <source>Near ones are %1</source>
        <translation>Ähnlich sind %1</translation>
    </message>
    <message>
        <source>No screw grade of that name: %1. %2; or take &quot;unknown&quot;.</source>
        <translation>Keine Spindelgüte dieses Namens: %1. %2; oder „unknown“ (unbekannt) nehmen.</translation>
    </message>
    <message>
        <source>No nut grade of that name: %1. %2; or take &quot;unknown&quot;.</source>
        <translation>Keine Muttergüte dieses Namens: %1. %2; oder „unknown“ (unbekannt) nehmen.</translation>
    </message>
    <message>
        <source>No figures here for hot %1 (%2): let it cool to 100 C before it carries a load.</source>
        <translation>Keine Werte hier für heißes Material (%1, %2): auf 100 °C abkühlen lassen, bevor es eine Last trägt.</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>stainless steel</source>
        <translation>nichtrostender Stahl</translation>
    </message>
    <message>
        <source>grey iron</source>
        <translation>Grauguss</translation>
    </message>
    <message>
        <source>ductile iron</source>
        <translation>Sphäroguss</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>bronze or brass</source>
        <translation>Bronze oder Messing</translation>
    </message>
    <message>
        <source>No material of that name: %1. %2; or take &quot;unknown scrap&quot;, or give its yield and ultimate stress.</source>
        <translation>Kein Werkstoff dieses Namens: %1. %2; oder „unknown scrap“ (unbekannter Schrott) nehmen oder Streckgrenze und Zugfestigkeit angeben.</translation>
    </message>
    <message>
        <source>This cannot be right for a material. Type it like %1.</source>
        <translation>Das kann für einen Werkstoff nicht stimmen. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>250 MPa or 36 ksi</source>
        <translation>250 MPa oder 36 ksi</translation>
    </message>
    <message>
        <source>400 MPa or 58 ksi</source>
        <translation>400 MPa oder 58 ksi</translation>
    </message>
    <message>
        <source>own figures</source>
        <translation>eigene Werte</translation>
    </message>
    <message>
        <source>stated by the user</source>
        <translation>vom Benutzer angegeben</translation>
    </message>
    <message>
        <source>No material given. Name a grade such as S235 or A36, or &quot;unknown scrap&quot;.</source>
        <translation>Kein Werkstoff angegeben. Eine Güte wie S235 oder A36 nennen oder „unknown scrap“ (unbekannter Schrott).</translation>
    </message>
    <message>
        <source>The ultimate stress is less than the yield. Give both from the same sheet.</source>
        <translation>Die Zugfestigkeit ist kleiner als die Streckgrenze. Beide aus demselben Zeugnis angeben.</translation>
    </message>
    <message>
        <source>stated by the user over %1</source>
        <translation>vom Benutzer angegeben statt %1</translation>
    </message>
    <message>
        <source>%1&#xa0;lbf·in/in</source>
        <translation>%1 lbf·in/in</translation>
    </message>
    <message>
        <source>the pin circle must lie on the disc, inside its rim</source>
        <translation>der Lochkreis muss auf der Scheibe liegen, innerhalb ihres Rands</translation>
    </message>
    <message>
        <source>the centre bearing must be larger than the bore</source>
        <translation>das mittlere Auflager muss größer sein als die Bohrung</translation>
    </message>
    <message>
        <source>the access holes leave nothing between them on the pin circle</source>
        <translation>die Montagelöcher lassen auf dem Lochkreis nichts zwischen sich</translation>
    </message>
    <message>
        <source>between the access holes</source>
        <translation>zwischen den Montagelöchern</translation>
    </message>
    <message>
        <source>at the bore</source>
        <translation>an der Bohrung</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>largest moment %1 %2, %3 = %4</source>
        <translation>größtes Moment %1 %2, %3 = %4</translation>
    </message>
    <message>
        <source>annular plate %1 to %2, %3, %4 over the lands on a %5 circle against %6 to %7 in the middle</source>
        <translation>Kreisringplatte %1 bis %2, %3, %4 über die Auflagen auf einem Kreis von %5 gegen %6 bis %7 in der Mitte</translation>
    </message>
    <message>
        <source>%1; eta = 1 - %2 x %3 / (pi x %4) = %5; %6</source>
        <translation>%1; eta = 1 - %2 x %3 / (pi x %4) = %5; %6</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Roark 7th ed. Table 11.2 equations; Timoshenko, Theory of Plates and Shells, art. 17; ligament efficiency (p - d)/p</source>
        <translation>Roark 7. Aufl. Gleichungen zu Tabelle 11.2; Timoshenko, Theory of Plates and Shells, Art. 17; Stegwirkungsgrad (p - d)/p</translation>
    </message>
    <message>
        <source>the bar estimate is for two stations, one at each end</source>
        <translation>die Abschätzung als Flachstück gilt für zwei Stationen, eine an jedem Ende</translation>
    </message>
    <message>
        <source>the bar must be wider than its holes</source>
        <translation>das Flachstück muss breiter sein als seine Löcher</translation>
    </message>
    <message>
        <source>the stations must lie on the bar</source>
        <translation>die Stationen müssen auf dem Flachstück liegen</translation>
    </message>
    <message>
        <source>beside the bore</source>
        <translation>neben der Bohrung</translation>
    </message>
    <message>
        <source>beside the access hole</source>
        <translation>neben dem Montageloch</translation>
    </message>
    <message>
        <source>in the bar</source>
        <translation>im Flachstück</translation>
    </message>
    <message>
        <source>bar as a beam: half of %1 at %2 from the middle, bearing at %3; net width %4 of %5 %6, moment %7, 6 M / %8 = %9</source>
        <translation>Flachstück als Balken: die Hälfte von %1 bei %2 von der Mitte, Auflager bei %3; Nettobreite %4 von %5 %6, Moment %7, 6 M / %8 = %9</translation>
    </message>
    <message>
        <source>beam theory with net section; Timoshenko, Strength of Materials, part I</source>
        <translation>Balkentheorie mit Nettoquerschnitt; Timoshenko, Strength of Materials, Teil I</translation>
    </message>
    <message>
        <source>the plate needs a thickness above 0</source>
        <translation>die Platte braucht eine Dicke über 0</translation>
    </message>
    <message>
        <source>at least one plate</source>
        <translation>mindestens eine Platte</translation>
    </message>
    <message>
        <source>the steel needs a modulus above 0</source>
        <translation>der Stahl braucht einen E-Modul über 0</translation>
    </message>
    <message>
        <source>no load to carry</source>
        <translation>keine Last zu tragen</translation>
    </message>
    <message>
        <source>how many stations carry the load: count the pins</source>
        <translation>wie viele Stationen die Last tragen: die Bolzen zählen</translation>
    </message>
    <message>
        <source>there is no handbook case for this outline; the field solution stands alone</source>
        <translation>für diesen Umriss gibt es keinen Handbuchfall; die Feldlösung steht allein</translation>
    </message>
    <message>
        <source>the shape of the plate and its size, disc 140 mm for one</source>
        <translation>die Form der Platte und ihre Größe, zum Beispiel Scheibe 140 mm</translation>
    </message>
    <message>
        <source>measure the plate&apos;s thickness</source>
        <translation>die Dicke der Platte messen</translation>
    </message>
    <message>
        <source>measure it</source>
        <translation>messen</translation>
    </message>
    <message>
        <source>there is no handbook case for stations that are not on one circle</source>
        <translation>für Stationen, die nicht auf einem Kreis liegen, gibt es keinen Handbuchfall</translation>
    </message>
    <message>
        <source>measure the pin circle</source>
        <translation>den Lochkreis messen</translation>
    </message>
    <message>
        <source>the plate&apos;s stiffness has no solution</source>
        <translation>die Steifigkeit der Platte hat keine Lösung</translation>
    </message>
    <message>
        <source>the bending past yield could not be followed</source>
        <translation>die Biegung über die Streckgrenze hinaus ließ sich nicht verfolgen</translation>
    </message>
    <message>
        <source>music wire</source>
        <translation>patentierter Federdraht (Klavierdraht)</translation>
    </message>
    <message>
        <source>oil-tempered wire</source>
        <translation>ölschlussvergüteter Draht</translation>
    </message>
    <message>
        <source>hard-drawn wire</source>
        <translation>hartgezogener Draht</translation>
    </message>
    <message>
        <source>chrome-vanadium wire</source>
        <translation>Chrom-Vanadium-Draht</translation>
    </message>
    <message>
        <source>chrome-silicon wire</source>
        <translation>Chrom-Silizium-Draht</translation>
    </message>
    <message>
        <source>give one true or false for each of the %1 stations</source>
        <translation>für jede der %1 Stationen einmal true oder false angeben</translation>
    </message>
    <message>
        <source>no station carries load; set at least one to true</source>
        <translation>keine Station trägt Last; mindestens eine auf true setzen</translation>
    </message>
    <message>
        <source>give one share, 0 or more, for each of the %1 stations</source>
        <translation>für jede der %1 Stationen einen Anteil angeben, 0 oder mehr</translation>
    </message>
    <message>
        <source>%1 left, least gaps %2 (%3)</source>
        <translation>%1 übrig, kleinste Spalte %2 (%3)</translation>
    </message>
    <message>
        <source>goes solid %1 too early</source>
        <translation>geht %1 zu früh auf Block</translation>
    </message>
    <message>
        <source>just solid</source>
        <translation>gerade auf Block</translation>
    </message>
    <message>
        <source>%1; the coils themselves are the end of it: squeeze less, or measure the solid length again</source>
        <translation>%1; die Windungen selbst sind das Ende: weniger zusammendrücken oder die Blocklänge noch einmal messen</translation>
    </message>
    <message>
        <source>%1; it is the %2 of swell: without it %3 would be left; cut the swollen pack apart, do not squeeze it</source>
        <translation>%1; das sind die %2 Aufquellung: ohne sie blieben %3; das aufgequollene Paket auseinanderschneiden, nicht zusammendrücken</translation>
    </message>
    <message>
        <source>%1; even without the swell; cut the swollen pack apart, do not squeeze it</source>
        <translation>%1; auch ohne die Aufquellung; das aufgequollene Paket auseinanderschneiden, nicht zusammendrücken</translation>
    </message>
    <message>
        <source>Coils apart</source>
        <translation>Luft zwischen den Windungen</translation>
    </message>
    <message>
        <source>EN 13906-1, least sum of gaps (from memory)</source>
        <translation>EN 13906-1, kleinste Summe der Spalte (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>%1: %2 at release (%3 less %4), solid at %5: %6</source>
        <translation>%1: %2 beim Lösen (%3 weniger %4), auf Block bei %5: %6</translation>
    </message>
    <message>
        <source>solid length of %1 not given: squeeze one in a vice until the coils touch and measure it, or count the coils and measure the wire</source>
        <translation>Blocklänge von %1 nicht angegeben: eine im Schraubstock zusammendrücken, bis sich die Windungen berühren, und messen, oder die Windungen zählen und den Draht messen</translation>
    </message>
    <message>
        <source>the springs</source>
        <translation>den Federn</translation>
    </message>
    <message>
        <source>Spring stress</source>
        <translation>Federspannung</translation>
    </message>
    <message>
        <source>%1: %2 in wire %3 against %4, %5 of %6 strength</source>
        <translation>%1: %2 im Draht %3 gegen %4, %5 der Festigkeit (%6)</translation>
    </message>
    <message>
        <source>%1 (wire not known: for information)</source>
        <translation>%1 (Draht nicht bekannt: nur zur Kenntnis)</translation>
    </message>
    <message>
        <source>%1: the spring itself may take a set</source>
        <translation>%1: die Feder selbst kann sich setzen</translation>
    </message>
    <message>
        <source>Shigley 9th ed. eq. (10-7), Tables 10-4 and 10-6; EN 13906-1 curvature factor</source>
        <translation>Shigley 9. Aufl. Gl. (10-7), Tabellen 10-4 und 10-6; Krümmungsfaktor EN 13906-1</translation>
    </message>
    <message>
        <source>length assembled and free, of one spring: how far the screw must back off until the pack is loose, and the energy stored, hang on it</source>
        <translation>Einbaulänge und ungespannte Länge einer Feder: wie weit die Spindel zurück muss, bis das Paket lose ist, und die gespeicherte Energie hängen davon ab</translation>
    </message>
    <message>
        <source>the springs carry nothing at release length: they are as long as when free; check assembled and free length</source>
        <translation>die Federn tragen bei der Lösehöhe nichts: sie sind so lang wie ungespannt; Einbaulänge und ungespannte Länge prüfen</translation>
    </message>
    <message>
        <source>what pushes back: a spring&apos;s force at a length, or the load in all</source>
        <translation>was zurückdrückt: die Kraft einer Feder bei einer Länge oder die Last insgesamt</translation>
    </message>
    <message>
        <source>spring %1</source>
        <translation>Feder %1</translation>
    </message>
    <message>
        <source>the coil must be more than two wires across (%1 over the outside of wire %2)</source>
        <translation>die Feder muss im Durchmesser mehr als zwei Drähte messen (%1 außen bei Draht %2)</translation>
    </message>
    <message>
        <source>ends taken as closed, so two of the %1 coils do not work; say how the ends are made</source>
        <translation>Enden als angelegt angenommen, also arbeiten zwei der %1 Windungen nicht; angeben, wie die Enden ausgeführt sind</translation>
    </message>
    <message>
        <source>a spring needs working coils; count them without the closed end coils</source>
        <translation>eine Feder braucht arbeitende Windungen; ohne die angelegten Endwindungen zählen</translation>
    </message>
    <message>
        <source>G %1 for %2</source>
        <translation>G %1 für %2</translation>
    </message>
    <message>
        <source>G %1 assumed (Shigley Table 10-5 runs from 77.2 to 82.7 GPa)</source>
        <translation>G %1 angenommen (Shigley Tabelle 10-5 reicht von 77,2 bis 82,7 GPa)</translation>
    </message>
    <message>
        <source>wire %1, mean coil %2, %3 active coils, %4</source>
        <translation>Draht %1, mittlerer Windungsdurchmesser %2, %3 arbeitende Windungen, %4</translation>
    </message>
    <message>
        <source>how long %1 is in the pack, before squeezing: measure between its seats</source>
        <translation>wie lang %1 im Paket ist, vor dem Zusammendrücken: zwischen den Sitzen messen</translation>
    </message>
    <message>
        <source>%1: figures contradict each other: %2 from %3, but %4 from %5; the stiffer one is taken for the force</source>
        <translation>%1: die Angaben widersprechen sich: %2 aus %3, aber %4 aus %5; für die Kraft gilt die steifere</translation>
    </message>
    <message>
        <source>%1: the force must rise as the spring gets shorter; check which reading belongs to which length</source>
        <translation>%1: die Kraft muss steigen, wenn die Feder kürzer wird; prüfen, welche Ablesung zu welcher Länge gehört</translation>
    </message>
    <message>
        <source>nominal forces taken 10 % either way</source>
        <translation>Nennkräfte mit 10 % nach beiden Seiten angenommen</translation>
    </message>
    <message>
        <source>%1: the reading at %2 lies off the straight line through the others (%3 read, %4 on the line); take it again</source>
        <translation>%1: die Ablesung bei %2 liegt neben der Geraden durch die anderen (%3 abgelesen, %4 auf der Geraden); noch einmal messen</translation>
    </message>
    <message>
        <source>the readings</source>
        <translation>den Ablesungen</translation>
    </message>
    <message>
        <source>the stated rate</source>
        <translation>der angegebenen Federrate</translation>
    </message>
    <message>
        <source>%1: figures contradict each other: a free length of %2 is given, but the forces say %3; the longer one is taken for the travel</source>
        <translation>%1: die Angaben widersprechen sich: ungespannte Länge %2 angegeben, die Kräfte aber sagen %3; für den Weg gilt die längere</translation>
    </message>
    <message>
        <source>%1: the free length %2 must be more than the length of the reading, %3</source>
        <translation>%1: die ungespannte Länge %2 muss größer sein als die Länge der Ablesung, %3</translation>
    </message>
    <message>
        <source>the reading and the free length %1</source>
        <translation>der Ablesung und der ungespannten Länge %1</translation>
    </message>
    <message>
        <source>rate %1 from %2</source>
        <translation>Federrate %1 aus %2</translation>
    </message>
    <message>
        <source>one nominal force of %1 taken as %2 (10 % either way)</source>
        <translation>eine Nennkraft von %1 als %2 angenommen (10 % nach beiden Seiten)</translation>
    </message>
    <message>
        <source>no rate to be had: free length assumed %1 (1.25 x assembled, stiff) for the force and %2 (1.8 x assembled, long) for the travel; a second reading settles it</source>
        <translation>keine Federrate zu bekommen: ungespannte Länge für die Kraft mit %1 angenommen (1,25 x Einbaulänge, steif) und für den Weg mit %2 (1,8 x Einbaulänge, lang); eine zweite Ablesung klärt es</translation>
    </message>
    <message>
        <source>a second force of %1 at another length (push it on a scale), or its free length: fixes the rate</source>
        <translation>eine zweite Kraft von %1 bei einer anderen Länge (auf eine Waage drücken) oder die ungespannte Länge: legt die Federrate fest</translation>
    </message>
    <message>
        <source>the force of %1 at a length (the manual, or push one on a scale); or its rate and free length; or wire, outside of coil and active coils with the free length</source>
        <translation>die Kraft von %1 bei einer Länge (Handbuch, oder eine auf die Waage drücken); oder Federrate und ungespannte Länge; oder Draht, Außendurchmesser und arbeitende Windungen mit der ungespannten Länge</translation>
    </message>
    <message>
        <source>the length of %1 when nothing presses on it; or its force at a length</source>
        <translation>die Länge von %1, wenn nichts darauf drückt; oder ihre Kraft bei einer Länge</translation>
    </message>
    <message>
        <source>%1: the free length %2 must be more than the assembled length %3</source>
        <translation>%1: die ungespannte Länge %2 muss größer sein als die Einbaulänge %3</translation>
    </message>
    <message>
        <source>nominal figures taken 10 % either way</source>
        <translation>Nennwerte mit 10 % nach beiden Seiten angenommen</translation>
    </message>
    <message>
        <source>solid length %1 from %2 coils of %3 wire, ends %4</source>
        <translation>Blocklänge %1 aus %2 Windungen von %3 Draht, Enden %4</translation>
    </message>
    <message>
        <source>solid length %1 from %2 coils of %3 wire, ends taken as closed and not ground</source>
        <translation>Blocklänge %1 aus %2 Windungen von %3 Draht, Enden als angelegt und nicht geschliffen angenommen</translation>
    </message>
    <message>
        <source>the length of %1 with its coils touching: squeeze one in a vice and measure, or count all coils and measure the wire</source>
        <translation>die Länge von %1, wenn sich die Windungen berühren: eine im Schraubstock zusammendrücken und messen, oder alle Windungen zählen und den Draht messen</translation>
    </message>
    <message>
        <source>sum of least gaps n (0.0015 D²/d + 0.1 d) of EN 13906-1 (from memory)</source>
        <translation>Summe der kleinsten Spalte n (0,0015 D²/d + 0,1 d) nach EN 13906-1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>a tenth of the solid length, common practice, no published source</source>
        <translation>ein Zehntel der Blocklänge, übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>%1: the solid length %2 is not under the assembled length %3; measure both again</source>
        <translation>%1: die Blocklänge %2 liegt nicht unter der Einbaulänge %3; beide noch einmal messen</translation>
    </message>
    <message>
        <source>a number is too large</source>
        <translation>eine Zahl ist zu groß</translation>
    </message>
    <message>
        <source>a pipe thread has no strength table here</source>
        <translation>ein Rohrgewinde hat hier keine Festigkeitstabelle</translation>
    </message>
    <message>
        <source>no thread is that small</source>
        <translation>so klein ist kein Gewinde</translation>
    </message>
    <message>
        <source>no thread is that large</source>
        <translation>so groß ist kein Gewinde</translation>
    </message>
    <message>
        <source>the pitch does not go with the diameter</source>
        <translation>die Steigung passt nicht zum Durchmesser</translation>
    </message>
    <message>
        <source>there is no %1 thread of that size; give its pitch and leave the series out</source>
        <translation>es gibt kein Gewinde %1 dieser Größe; seine Steigung angeben und die Reihe weglassen</translation>
    </message>
    <message>
        <source>%1 %2 has %3 threads per inch; leave the series out if yours is another</source>
        <translation>%1 %2 hat %3 Gänge je Zoll; die Reihe weglassen, wenn es andere sind</translation>
    </message>
    <message>
        <source>an inch size needs its threads per inch or its series</source>
        <translation>ein Zollmaß braucht seine Gänge je Zoll oder seine Reihe</translation>
    </message>
    <message>
        <source>%1 is no series we know</source>
        <translation>%1 ist keine bekannte Reihe</translation>
    </message>
    <message>
        <source>the numbered sizes run from #4 to #12</source>
        <translation>die nummerierten Größen gehen von #4 bis #12</translation>
    </message>
    <message>
        <source>an ACME thread of that size needs its threads per inch</source>
        <translation>ein ACME-Gewinde dieser Größe braucht seine Gänge je Zoll</translation>
    </message>
    <message>
        <source>an ACME thread has 16 threads per inch at the most</source>
        <translation>ein ACME-Gewinde hat höchstens 16 Gänge je Zoll</translation>
    </message>
    <message>
        <source>a pitch in mm follows the x</source>
        <translation>auf das x folgt eine Steigung in mm</translation>
    </message>
    <message>
        <source>there is no coarse pitch for that size; give it</source>
        <translation>für diese Größe gibt es keine Regelsteigung; angeben</translation>
    </message>
    <message>
        <source>give the pitch in mm after an x</source>
        <translation>die Steigung in mm nach einem x angeben</translation>
    </message>
    <message>
        <source>there is no usual pitch for that size; give it</source>
        <translation>für diese Größe gibt es keine übliche Steigung; angeben</translation>
    </message>
    <message>
        <source>the lead is a whole number of pitches</source>
        <translation>die Ganghöhe ist eine ganze Zahl von Steigungen</translation>
    </message>
    <message>
        <source>a trapezoidal thread has a pitch of 1.5 mm or more</source>
        <translation>ein Trapezgewinde hat eine Steigung von 1,5 mm oder mehr</translation>
    </message>
    <message>
        <source>Not a thread: %1</source>
        <translation>Kein Gewinde: %1</translation>
    </message>
    <message>
        <source>%1. Type it like %2.</source>
        <translation>%1. Schreibweise zum Beispiel: %2.</translation>
    </message>
    <message>
        <source>5/8-11 UNC or M20</source>
        <translation>5/8-11 UNC oder M20</translation>
    </message>
    <message>
        <source>too long</source>
        <translation>zu lang</translation>
    </message>
    <message>
        <source>it holds odd characters</source>
        <translation>enthält seltsame Zeichen</translation>
    </message>
    <message>
        <source>Nothing typed where a thread is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo ein Gewinde gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>classes 2A and 2B, ASME B1.1</source>
        <translation>Toleranzklassen 2A und 2B, ASME B1.1</translation>
    </message>
    <message>
        <source>6g and 6H, ISO 965-1</source>
        <translation>6g und 6H, ISO 965-1</translation>
    </message>
    <message>
        <source>medium class, BS 84 (from memory)</source>
        <translation>Klasse mittel, BS 84 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>class 2G, ASME B1.5</source>
        <translation>Klasse 2G, ASME B1.5</translation>
    </message>
    <message>
        <source>basic sizes, ISO 2904</source>
        <translation>Nennmaße, ISO 2904</translation>
    </message>
    <message>
        <source>write a range with &quot;to&quot; where a figure has a sign</source>
        <translation>einen Bereich mit &quot;to&quot; schreiben, wo eine Zahl ein Vorzeichen hat</translation>
    </message>
    <message>
        <source>the second figure has no unit</source>
        <translation>die zweite Zahl hat keine Einheit</translation>
    </message>
    <message>
        <source>a range starts with the smaller figure</source>
        <translation>ein Bereich beginnt mit der kleineren Zahl</translation>
    </message>
    <message>
        <source>a comma only groups thousands, the decimal mark is a point</source>
        <translation>hier trennt ein Komma nur Tausender, das Dezimalzeichen ist ein Punkt</translation>
    </message>
    <message>
        <source>a number has one decimal point</source>
        <translation>eine Zahl hat ein einziges Dezimalzeichen</translation>
    </message>
    <message>
        <source>the number is too long</source>
        <translation>die Zahl ist zu lang</translation>
    </message>
    <message>
        <source>a fraction has whole numbers above and below</source>
        <translation>ein Bruch hat oben und unten ganze Zahlen</translation>
    </message>
    <message>
        <source>a fraction cannot have 0 below</source>
        <translation>ein Bruch kann unten keine 0 haben</translation>
    </message>
    <message>
        <source>the fraction after a whole number is less than one</source>
        <translation>der Bruch nach einer ganzen Zahl ist kleiner als eins</translation>
    </message>
    <message>
        <source>a temperature has no percentage; give degrees</source>
        <translation>eine Temperatur hat keine Prozente; Grad angeben</translation>
    </message>
    <message>
        <source>the tolerance is as large as the figure</source>
        <translation>die Toleranz ist so groß wie der Wert</translation>
    </message>
    <message>
        <source>a gauge number has no tolerance</source>
        <translation>eine Blechnummer hat keine Toleranz</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation>keine Einheit</translation>
    </message>
    <message>
        <source>the sheet gauges run from 3 to 30</source>
        <translation>die Blechnummern gehen von 3 bis 30</translation>
    </message>
    <message>
        <source>below absolute zero</source>
        <translation>unter dem absoluten Nullpunkt</translation>
    </message>
    <message>
        <source>far too large</source>
        <translation>viel zu groß</translation>
    </message>
    <message>
        <source>far too small</source>
        <translation>viel zu klein</translation>
    </message>
    <message>
        <source>Not a length: %1</source>
        <translation>Keine Länge: %1</translation>
    </message>
    <message>
        <source>Not an area: %1</source>
        <translation>Keine Fläche: %1</translation>
    </message>
    <message>
        <source>Not a force: %1</source>
        <translation>Keine Kraft: %1</translation>
    </message>
    <message>
        <source>Not a spring rate: %1</source>
        <translation>Keine Federrate: %1</translation>
    </message>
    <message>
        <source>Not a torque: %1</source>
        <translation>Kein Drehmoment: %1</translation>
    </message>
    <message>
        <source>Not a stress or pressure: %1</source>
        <translation>Keine Spannung und kein Druck: %1</translation>
    </message>
    <message>
        <source>Not an angle: %1</source>
        <translation>Kein Winkel: %1</translation>
    </message>
    <message>
        <source>Not a temperature: %1</source>
        <translation>Keine Temperatur: %1</translation>
    </message>
    <message>
        <source>Nothing typed where a length is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo eine Länge gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where an area is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo eine Fläche gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where a force is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo eine Kraft gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where a spring rate is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo eine Federrate gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where a torque is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo ein Drehmoment gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where a stress or pressure is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo eine Spannung oder ein Druck gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where an angle is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo ein Winkel gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>Nothing typed where a temperature is wanted. Type it like %1.</source>
        <translation>Nichts eingegeben, wo eine Temperatur gebraucht wird. Schreibweise zum Beispiel: %1.</translation>
    </message>
    <message>
        <source>%1 (%2). Type it like %3.</source>
        <translation>%1 (%2). Schreibweise zum Beispiel: %3.</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>force</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>spring rate</source>
        <translation>Federrate</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>stress or pressure</source>
        <translation>Spannung oder Druck</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>quantity</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>20 mm or 3/4 in</source>
        <translation>20 mm oder 3/4 in</translation>
    </message>
    <message>
        <source>1600 mm2 or 2.5 in2</source>
        <translation>1600 mm2 oder 2,5 in2</translation>
    </message>
    <message>
        <source>7500 N or 1690 lbf</source>
        <translation>7500 N oder 1690 lbf</translation>
    </message>
    <message>
        <source>12 N/mm or 68 lb/in</source>
        <translation>12 N/mm oder 68 lb/in</translation>
    </message>
    <message>
        <source>60 N.m or 45 lb-ft</source>
        <translation>60 N.m oder 45 lb-ft</translation>
    </message>
    <message>
        <source>30 deg</source>
        <translation>30 deg</translation>
    </message>
    <message>
        <source>20 C or 68 F</source>
        <translation>20 C oder 68 F</translation>
    </message>
    <message>
        <source>20 mm</source>
        <translation>20 mm</translation>
    </message>
    <message>
        <source>one figure is wanted here, not a range</source>
        <translation>hier wird ein einzelner Wert gebraucht, kein Bereich</translation>
    </message>
    <message>
        <source>not written: %1</source>
        <translation>nicht geschrieben: %1</translation>
    </message>
    <message>
        <source>there is no such folder; make it first or choose another</source>
        <translation>diesen Ordner gibt es nicht; erst anlegen oder einen anderen wählen</translation>
    </message>
    <message>
        <source>the folder or the file is write-protected; save somewhere else</source>
        <translation>der Ordner oder die Datei ist schreibgeschützt; woanders speichern</translation>
    </message>
    <message>
        <source>the disk is read-only; save somewhere else</source>
        <translation>der Datenträger lässt sich nur lesen; woanders speichern</translation>
    </message>
    <message>
        <source>the disk is full; make room or save somewhere else</source>
        <translation>der Datenträger ist voll; Platz schaffen oder woanders speichern</translation>
    </message>
    <message>
        <source>the file is larger than is allowed here</source>
        <translation>die Datei ist größer, als hier erlaubt ist</translation>
    </message>
    <message>
        <source>the name is too long; choose a shorter one</source>
        <translation>der Name ist zu lang; einen kürzeren wählen</translation>
    </message>
    <message>
        <source>this is a folder; give a file name</source>
        <translation>das ist ein Ordner; einen Dateinamen angeben</translation>
    </message>
    <message>
        <source>not written: no file name was given</source>
        <translation>nicht geschrieben: kein Dateiname angegeben</translation>
    </message>
    <message>
        <source>not written: this is a device or a pipe, not a file</source>
        <translation>nicht geschrieben: das ist ein Gerät oder eine Pipe, keine Datei</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>no file name was given</source>
        <translation>kein Dateiname angegeben</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>no permission to read it</source>
        <translation>keine Berechtigung, sie zu lesen</translation>
    </message>
    <message>
        <source>this is a folder; give a file</source>
        <translation>das ist ein Ordner; eine Datei angeben</translation>
    </message>
    <message>
        <source>this is a device or a pipe, not a file</source>
        <translation>das ist ein Gerät oder eine Pipe, keine Datei</translation>
    </message>
    <message>
        <source>larger than %1 KiB, which is no file of ours</source>
        <translation>größer als %1 KiB, das ist keine Datei von uns</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>hält</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>verbiegt sich</translation>
    </message>
    <message>
        <source>breaks</source>
        <translation>bricht</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>access holes</source>
        <translation>Montagelöcher</translation>
    </message>
    <message>
        <source>backing bar</source>
        <translation>Gegenhalter</translation>
    </message>
    <message>
        <source>bar thread</source>
        <translation>Gewinde im Gegenhalter</translation>
    </message>
    <message>
        <source>centre bearing</source>
        <translation>mittleres Auflager</translation>
    </message>
    <message>
        <source>flange</source>
        <translation>Flansch</translation>
    </message>
    <message>
        <source>hub</source>
        <translation>Nabe</translation>
    </message>
    <message>
        <source>lands</source>
        <translation>Auflagen</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>Zugstangen</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>pins</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>plate</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>plate thread</source>
        <translation>Plattengewinde</translation>
    </message>
    <message>
        <source>puller bolts</source>
        <translation>Abzieherschrauben</translation>
    </message>
    <message>
        <source>ram</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>rod</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>screw</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>screw point</source>
        <translation>Spindelspitze</translation>
    </message>
    <message>
        <source>shaft thread</source>
        <translation>Wellengewinde</translation>
    </message>
    <message>
        <source>springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>stop block</source>
        <translation>Anschlagklotz</translation>
    </message>
    <message>
        <source>strongback</source>
        <translation>Traverse</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>Unterlegscheibe</translation>
    </message>
    <message>
        <source>station %1</source>
        <translation>Station %1</translation>
    </message>
    <message>
        <source>One station hung</source>
        <translation>Eine Station hängt</translation>
    </message>
    <message>
        <source>%1 hung, the others carrying: folds at %2 x; wanted %3 (an accident)</source>
        <translation>%1 hängt, die anderen tragen: klappt beim %2-Fachen zusammen; verlangt %3 (ein Unfall)</translation>
    </message>
    <message>
        <source>%1 hung, the others carrying: carries at least %2 x; wanted %3 (an accident)</source>
        <translation>%1 hängt, die anderen tragen: trägt mindestens das %2-Fache; verlangt %3 (ein Unfall)</translation>
    </message>
    <message>
        <source>collapse by elastic-plastic bending, von Mises; limits: common practice, no published source</source>
        <translation>Zusammenklappen durch elastisch-plastische Biegung, von Mises; Grenzen: übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>Tipping</source>
        <translation>Kippen</translation>
    </message>
    <message>
        <source>with %1 hung the load stands %2 off the middle, the bearing&apos;s radius is %3</source>
        <translation>hängt %1, steht die Last %2 neben der Mitte, der Radius des Auflagers ist %3</translation>
    </message>
    <message>
        <source>%1: all keepers out before letting up; if one hangs, squeeze again</source>
        <translation>%1: alle Keile heraus, bevor abgelassen wird; hängt einer, wieder zusammendrücken</translation>
    </message>
    <message>
        <source>One station stuck</source>
        <translation>Eine Station sitzt fest</translation>
    </message>
    <message>
        <source>elastic field to 1.5 x yield at the worst place, where a set begins to show; common practice, no published source for the limit</source>
        <translation>elastisches Feld bis 1,5 x Streckgrenze an der schlimmsten Stelle, wo eine bleibende Verformung sichtbar wird; übliche Praxis, keine veröffentlichte Quelle für die Grenze</translation>
    </message>
    <message>
        <source>%1 rusted fast may take %2 more than its share before the plate sets</source>
        <translation>%1 festgerostet kann %2 mehr als ihren Anteil nehmen, bevor sich die Platte bleibend verformt</translation>
    </message>
    <message>
        <source>%1; what the wrench can add is not known: give its length and the pull</source>
        <translation>%1; was der Schlüssel dazugeben kann, ist nicht bekannt: seine Länge und den Zug angeben</translation>
    </message>
    <message>
        <source>%1; the wrench can add %2</source>
        <translation>%1; der Schlüssel kann %2 dazugeben</translation>
    </message>
    <message>
        <source>%1: watch that all retainers move together, and stop if one does not</source>
        <translation>%1: darauf achten, dass alle Federteller gemeinsam gehen, und aufhören, wenn einer nicht mitgeht</translation>
    </message>
    <message>
        <source>Retainer tilt</source>
        <translation>Schiefstand des Federtellers</translation>
    </message>
    <message>
        <source>the bent plate tilts the retainer of %1 by %2 across it, %3 allowed</source>
        <translation>die gebogene Platte stellt den Federteller von %1 auf seiner Breite um %2 schräg, erlaubt %3</translation>
    </message>
    <message>
        <source>factors: ASME BTH-1 category A design factor 2.0 times the plastic shape factor 1.5; collapse by elastic-plastic bending, von Mises</source>
        <translation>Faktoren: ASME BTH-1 Kategorie A, Auslegungsfaktor 2,0 mal plastischer Formfaktor 1,5; Zusammenklappen durch elastisch-plastische Biegung, von Mises</translation>
    </message>
    <message>
        <source>none to see</source>
        <translation>keine zu sehen</translation>
    </message>
    <message>
        <source>Plate, folding</source>
        <translation>Platte, Zusammenklappen</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>nicht ausgerechnet</translation>
    </message>
    <message>
        <source>folds at %1 x the load of %2; wanted %3</source>
        <translation>klappt beim %1-Fachen der Last von %2 zusammen; verlangt %3</translation>
    </message>
    <message>
        <source>carries at least %1 x the load of %2; wanted %3</source>
        <translation>trägt mindestens das %1-Fache der Last von %2; verlangt %3</translation>
    </message>
    <message>
        <source>%1; yields first at %2 x, %3</source>
        <translation>%1; fließt zuerst beim %2-Fachen, %3</translation>
    </message>
    <message>
        <source>%1; counted with %2 x for hammering</source>
        <translation>%1; mit %2 x für Schläge gerechnet</translation>
    </message>
    <message>
        <source>%1; half as much again is wanted as nobody states the load</source>
        <translation>%1; die Hälfte mehr ist verlangt, da niemand die Last angibt</translation>
    </message>
    <message>
        <source>Plate, set</source>
        <translation>Platte, bleibende Verformung</translation>
    </message>
    <message>
        <source>limit: common practice, no published source; set by elastic-plastic bending, von Mises</source>
        <translation>Grenze: übliche Praxis, keine veröffentlichte Quelle; bleibende Verformung durch elastisch-plastische Biegung, von Mises</translation>
    </message>
    <message>
        <source>allowed %1</source>
        <translation>erlaubt %1</translation>
    </message>
    <message>
        <source>set after 1.25 x the load: %1; %2</source>
        <translation>bleibende Verformung nach 1,25 x Last: %1; %2</translation>
    </message>
    <message>
        <source>set after the load: %1, after 1.25 x: %2; %3</source>
        <translation>bleibende Verformung nach der Last: %1, nach 1,25 x: %2; %3</translation>
    </message>
    <message>
        <source>set after the load: %1, and 1.25 x is more than it carries; %2</source>
        <translation>bleibende Verformung nach der Last: %1, und 1,25 x ist mehr, als sie trägt; %2</translation>
    </message>
    <message>
        <source>set after the load: %1; %2</source>
        <translation>bleibende Verformung nach der Last: %1; %2</translation>
    </message>
    <message>
        <source>it folds before it carries the load</source>
        <translation>sie klappt zusammen, bevor sie die Last trägt</translation>
    </message>
    <message>
        <source>Plate, cracking</source>
        <translation>Platte, Reißen</translation>
    </message>
    <message>
        <source>brittle: worst stress %1 %2 against %3 to break; wanted %4 x</source>
        <translation>spröde: größte Spannung %1 %2 gegen %3 bis zum Bruch; verlangt %4 x</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>a crack was seen: do not use this piece</source>
        <translation>ein Riss wurde gesehen: dieses Stück nicht nehmen</translation>
    </message>
    <message>
        <source>brittle by its nature: judged on the worst stress, no hammering</source>
        <translation>von Natur spröde: nach der größten Spannung beurteilt, nicht schlagen</translation>
    </message>
    <message>
        <source>the file skates or the strip snaps: judged as brittle, no hammering</source>
        <translation>die Feile rutscht oder der Streifen bricht: als spröde beurteilt, nicht schlagen</translation>
    </message>
    <message>
        <source>file it first: if the file skates, do not use it; bend a strip and look for cracks</source>
        <translation>erst feilen: rutscht die Feile, nicht nehmen; einen Streifen biegen und nach Rissen sehen</translation>
    </message>
    <message>
        <source>the file bites and the strip bends: soft steel, taken at %1 yield</source>
        <translation>die Feile greift und der Streifen biegt sich: weicher Stahl, Streckgrenze %1 angenommen</translation>
    </message>
    <message>
        <source>%1, yields at %2</source>
        <translation>%1, Streckgrenze %2</translation>
    </message>
    <message>
        <source>must be more than 0, like 20 mm or 3/4 in</source>
        <translation>muss größer als 0 sein, zum Beispiel 20 mm oder 3/4 in</translation>
    </message>
    <message>
        <source>must be 0 (no bore) or more, like 20 mm or 3/4 in</source>
        <translation>muss 0 (keine Bohrung) oder mehr sein, zum Beispiel 20 mm oder 3/4 in</translation>
    </message>
    <message>
        <source>%1 is less than the slot&apos;s width of %2; a slot&apos;s length goes from end to end</source>
        <translation>%1 ist weniger als die Breite des Langlochs von %2; die Länge eines Langlochs geht von Ende zu Ende</translation>
    </message>
    <message>
        <source>the open slot of station %1 does not run out to the rim in one clean mouth; move it inside the plate, turn it, or make it narrower</source>
        <translation>der offene Schlitz von Station %1 läuft nicht mit einer sauberen Mündung zum Rand hinaus; weiter in die Platte rücken, drehen oder schmaler machen</translation>
    </message>
    <message>
        <source>the open slot of extra hole %1 does not run out to the rim in one clean mouth; move it inside the plate, turn it, or make it narrower</source>
        <translation>der offene Schlitz von Zusatzloch %1 läuft nicht mit einer sauberen Mündung zum Rand hinaus; weiter in die Platte rücken, drehen oder schmaler machen</translation>
    </message>
    <message>
        <source>must be 1 or more</source>
        <translation>muss 1 oder mehr sein</translation>
    </message>
    <message>
        <source>the access hole of station %1</source>
        <translation>das Montageloch von Station %1</translation>
    </message>
    <message>
        <source>make the bore smaller or the plate larger (its origin is the bore centre)</source>
        <translation>die Bohrung kleiner oder die Platte größer machen (ihr Nullpunkt ist die Mitte der Bohrung)</translation>
    </message>
    <message>
        <source>make the hole or stations.circle smaller, or the plate larger</source>
        <translation>das Loch oder stations.circle kleiner machen oder die Platte größer</translation>
    </message>
    <message>
        <source>move it inward or make it smaller</source>
        <translation>nach innen rücken oder kleiner machen</translation>
    </message>
    <message>
        <source>make the bore or the access holes smaller, or stations.circle larger</source>
        <translation>die Bohrung oder die Montagelöcher kleiner machen oder stations.circle größer</translation>
    </message>
    <message>
        <source>move one of them or make it smaller</source>
        <translation>eines davon rücken oder kleiner machen</translation>
    </message>
    <message>
        <source>%1 runs over the rim; %2</source>
        <translation>%1 läuft über den Rand; %2</translation>
    </message>
    <message>
        <source>the access holes of stations %1 run over the rim; %2</source>
        <translation>die Montagelöcher der Stationen %1 laufen über den Rand; %2</translation>
    </message>
    <message>
        <source>%1 lies outside the plate; %2</source>
        <translation>%1 liegt außerhalb der Platte; %2</translation>
    </message>
    <message>
        <source>the access holes of stations %1 lie outside the plate; %2</source>
        <translation>die Montagelöcher der Stationen %1 liegen außerhalb der Platte; %2</translation>
    </message>
    <message>
        <source>%1 is larger than the plate; %2</source>
        <translation>%1 ist größer als die Platte; %2</translation>
    </message>
    <message>
        <source>the access holes of stations %1 are larger than the plate; %2</source>
        <translation>die Montagelöcher der Stationen %1 sind größer als die Platte; %2</translation>
    </message>
    <message>
        <source>%1 runs into %3; %2</source>
        <translation>%1 läuft in %3 hinein; %2</translation>
    </message>
    <message>
        <source>the access holes of stations %1 run into %3; %2</source>
        <translation>die Montagelöcher der Stationen %1 laufen in %3 hinein; %2</translation>
    </message>
    <message>
        <source>%1 lies within or around %3; %2</source>
        <translation>%1 liegt in oder um %3; %2</translation>
    </message>
    <message>
        <source>the access holes of stations %1 lie within or around %3; %2</source>
        <translation>die Montagelöcher der Stationen %1 liegen in oder um %3; %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>the access holes of stations %1 run into each other; make the holes smaller or stations.circle larger</source>
        <translation>die Montagelöcher der Stationen %1 laufen ineinander; die Löcher kleiner oder stations.circle größer machen</translation>
    </message>
    <message>
        <source>the edge comes too close to itself to work out where the cut runs beside it; move the figures by a little</source>
        <translation>die Kante kommt sich selbst zu nahe, um auszurechnen, wo der Schnitt neben ihr läuft; die Maße ein wenig ändern</translation>
    </message>
    <message>
        <source>must be more than 0, like 140 mm or 5 1/2 in</source>
        <translation>muss größer als 0 sein, zum Beispiel 140 mm oder 5 1/2 in</translation>
    </message>
    <message>
        <source>an outline needs at least three corners</source>
        <translation>ein Umriss braucht mindestens drei Ecken</translation>
    </message>
    <message>
        <source>corner %1 is not a number</source>
        <translation>Ecke %1 ist keine Zahl</translation>
    </message>
    <message>
        <source>corner %1 and the next one are the same point; leave one of them out</source>
        <translation>Ecke %1 und die nächste sind derselbe Punkt; eine davon weglassen</translation>
    </message>
    <message>
        <source>the outline crosses itself; list the corners in order round the plate</source>
        <translation>der Umriss kreuzt sich selbst; die Ecken der Reihe nach um die Platte auflisten</translation>
    </message>
    <message>
        <source>the outline has no area; its corners lie on one line</source>
        <translation>der Umriss hat keine Fläche; seine Ecken liegen auf einer Linie</translation>
    </message>
    <message>
        <source>%1 is less than the width of %2; with round ends a bar is at least as long as it is wide</source>
        <translation>%1 ist weniger als die Breite von %2; mit runden Enden ist ein Flachstück mindestens so lang wie breit</translation>
    </message>
    <message>
        <source>%1 must be between 0 and half the shorter side, %2</source>
        <translation>%1 muss zwischen 0 und der halben kürzeren Seite liegen, %2</translation>
    </message>
    <message>
        <source>Penetrating oil and solvent give off vapour that catches fire: wipe the joint dry, keep an extinguisher by.</source>
        <translation>Rostlöser und Lösemittel geben Dämpfe ab, die sich entzünden: die Fuge trocken wischen, Feuerlöscher bereithalten.</translation>
    </message>
    <message>
        <source>A plugged shaft or another closed hollow can burst when heated: open it first.</source>
        <translation>Eine verschlossene Welle oder ein anderer Hohlraum kann beim Erwärmen platzen: erst öffnen.</translation>
    </message>
    <message>
        <source>Rubber seals and O-rings harden and leak: take them out, or fit new ones.</source>
        <translation>Gummidichtungen und O-Ringe werden hart und undicht: herausnehmen oder neue einsetzen.</translation>
    </message>
    <message>
        <source>A rolling bearing loses hardness and size: keep it cool, or fit a new one.</source>
        <translation>Ein Wälzlager verliert Härte und Maß: kühl halten oder ein neues einbauen.</translation>
    </message>
    <message>
        <source>Grease melts and runs out, and burns when hotter still: clean and grease afresh.</source>
        <translation>Fett schmilzt und läuft aus, und brennt bei mehr Hitze: reinigen und neu schmieren.</translation>
    </message>
    <message>
        <source>A spring loses its temper, and force with it, for good: do not heat springs.</source>
        <translation>Eine Feder glüht aus und verliert ihre Kraft für immer: Federn nicht erwärmen.</translation>
    </message>
    <message>
        <source>Oil smokes and flashes: drain it, or keep the flame off it.</source>
        <translation>Öl raucht und entflammt: ablassen oder die Flamme davon fernhalten.</translation>
    </message>
    <message>
        <source>Hardened shafts, keys and gears soften for good: stay under what they were tempered at.</source>
        <translation>Gehärtete Wellen, Passfedern und Zahnräder werden für immer weich: unter ihrer Anlasstemperatur bleiben.</translation>
    </message>
    <message>
        <source>Zinc melts at about {420} and its fume makes ill: grind the coating off first.</source>
        <translation>Zink schmilzt bei etwa {420}, und sein Rauch macht krank: die Schicht erst abschleifen.</translation>
    </message>
    <message>
        <source>Hot steel is weaker: 0.81 of its elastic limit is left at {200}, 0.61 at {300}, 0.36 at {500}.</source>
        <translation>Heißer Stahl ist schwächer: 0,81 seiner Elastizitätsgrenze bleiben bei {200}, 0,61 bei {300}, 0,36 bei {500}.</translation>
    </message>
    <message>
        <source>EN 1993-1-2:2005 Table 3.1</source>
        <translation>EN 1993-1-2:2005 Tabelle 3.1</translation>
    </message>
    <message>
        <source>The yield of steel falls too: 0.78 of it is left at {500}, 0.47 at {600}, 0.23 at {700}.</source>
        <translation>Auch die Streckgrenze von Stahl fällt: 0,78 davon bleiben bei {500}, 0,47 bei {600}, 0,23 bei {700}.</translation>
    </message>
    <message>
        <source>Hot screws and bolts are weaker: 0.94 of their strength is left at {200}, 0.78 at {400}, 0.22 at {600}.</source>
        <translation>Heiße Schrauben sind schwächer: 0,94 ihrer Festigkeit bleiben bei {200}, 0,78 bei {400}, 0,22 bei {600}.</translation>
    </message>
    <message>
        <source>EN 1993-1-2:2005 Table D.1 (from memory)</source>
        <translation>EN 1993-1-2:2005 Tabelle D.1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Cast iron cracks when it is heated in one spot or quenched: warm it slowly all round, and let it cool by itself.</source>
        <translation>Gusseisen reißt, wenn es an einer Stelle erhitzt oder abgeschreckt wird: rundum langsam anwärmen und von selbst abkühlen lassen.</translation>
    </message>
    <message>
        <source>Heat-treated aluminium loses strength for good, and shows no colour before it melts: measure the temperature.</source>
        <translation>Ausgehärtetes Aluminium verliert für immer Festigkeit und zeigt vor dem Schmelzen keine Glühfarbe: die Temperatur messen.</translation>
    </message>
    <message>
        <source>ISO 4032 m min and s (published tables of two suppliers agree)</source>
        <translation>ISO 4032 m min und s (veröffentlichte Tabellen zweier Lieferanten stimmen überein)</translation>
    </message>
    <message>
        <source>ASME B18.2.2 hex nut H min (published tables of two suppliers agree); bolt ASME B18.2.1 (from memory)</source>
        <translation>ASME B18.2.2 Sechskantmutter H min (veröffentlichte Tabellen zweier Lieferanten stimmen überein); Schraube ASME B18.2.1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASME B18.2.2 hex nut H min (published table of a supplier); bolt ASME B18.2.1 (from memory)</source>
        <translation>ASME B18.2.2 Sechskantmutter H min (veröffentlichte Tabelle eines Lieferanten); Schraube ASME B18.2.1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>BS 1083:1965, Machinery&apos;s Handbook 31st ed., British Standard Whitworth nuts, Table 1</source>
        <translation>BS 1083:1965, Machinery&apos;s Handbook 31. Aufl., British Standard Whitworth nuts, Tabelle 1</translation>
    </message>
    <message>
        <source>EN 10025-2:2004 Table 7; E and nu EN 1993-1-1</source>
        <translation>EN 10025-2:2004 Tabelle 7; E und nu EN 1993-1-1</translation>
    </message>
    <message>
        <source>EN 10025-2 (from memory)</source>
        <translation>EN 10025-2 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM A36/A36M: 36 and 58 ksi (from memory); E AISC 360</source>
        <translation>ASTM A36/A36M: 36 und 58 ksi (aus dem Gedächtnis); E AISC 360</translation>
    </message>
    <message>
        <source>ASTM A283/A283M grade C: 30 and 55 ksi (from memory); E AISC 360</source>
        <translation>ASTM A283/A283M Grade C: 30 und 55 ksi (aus dem Gedächtnis); E AISC 360</translation>
    </message>
    <message>
        <source>Mamlouk and Zaniewski, Materials for Civil and Construction Engineers, Table 3.2 (ASTM A572: 42 and 60 ksi)</source>
        <translation>Mamlouk und Zaniewski, Materials for Civil and Construction Engineers, Tabelle 3.2 (ASTM A572: 42 und 60 ksi)</translation>
    </message>
    <message>
        <source>ASTM A572/A572M grade 50: 50 and 65 ksi (from memory); E AISC 360</source>
        <translation>ASTM A572/A572M Grade 50: 50 und 65 ksi (aus dem Gedächtnis); E AISC 360</translation>
    </message>
    <message>
        <source>Mamlouk and Zaniewski, Materials for Civil and Construction Engineers, Table 3.2 (ASTM A529: 50 ksi); 65 ksi (from memory)</source>
        <translation>Mamlouk und Zaniewski, Materials for Civil and Construction Engineers, Tabelle 3.2 (ASTM A529: 50 ksi); 65 ksi (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Mamlouk and Zaniewski, Materials for Civil and Construction Engineers, Table 3.2 (ASTM A588: 50 and 70 ksi)</source>
        <translation>Mamlouk und Zaniewski, Materials for Civil and Construction Engineers, Tabelle 3.2 (ASTM A588: 50 und 70 ksi)</translation>
    </message>
    <message>
        <source>ASTM A514/A514M: 100 and 110 ksi (from memory); E AISC 360</source>
        <translation>ASTM A514/A514M: 100 und 110 ksi (aus dem Gedächtnis); E AISC 360</translation>
    </message>
    <message>
        <source>ASTM A514/A514M: 90 and 100 ksi (from memory); E AISC 360</source>
        <translation>ASTM A514/A514M: 90 und 100 ksi (aus dem Gedächtnis); E AISC 360</translation>
    </message>
    <message>
        <source>ASTM A7-39: 33 and 60 ksi; E AISC 360</source>
        <translation>ASTM A7-39: 33 und 60 ksi; E AISC 360</translation>
    </message>
    <message>
        <source>Shigley&apos;s Mechanical Engineering Design, 9th ed., Table A-20 (ASTM minimum, 18-32 mm); E Table A-5</source>
        <translation>Shigley&apos;s Mechanical Engineering Design, 9. Aufl., Tabelle A-20 (ASTM-Mindestwerte, 18-32 mm); E Tabelle A-5</translation>
    </message>
    <message>
        <source>annealed bar, handbook value (from memory)</source>
        <translation>geglühter Stab, Handbuchwert (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>28-32 HRC, low end of 95 and 130 ksi: common practice, no published source</source>
        <translation>28-32 HRC, unteres Ende von 95 und 130 ksi: übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>EN 10083-2 normalised (from memory)</source>
        <translation>EN 10083-2 normalgeglüht (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>EN 10083-3 quenched and tempered (from memory)</source>
        <translation>EN 10083-3 vergütet (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM A240 304L, the weaker of the two (from memory)</source>
        <translation>ASTM A240 304L, der schwächere der beiden (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>handbook value for 304 (from memory)</source>
        <translation>Handbuchwert für 304 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM A240 316L, the weaker of the two (from memory)</source>
        <translation>ASTM A240 316L, der schwächere der beiden (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>EN 10088-1 (from memory)</source>
        <translation>EN 10088-1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM B209 plate: 35 and 42 ksi (from memory)</source>
        <translation>ASTM B209 Platte: 35 und 42 ksi (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>handbook value for aluminium (from memory)</source>
        <translation>Handbuchwert für Aluminium (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>cast aluminium</source>
        <translation>Aluminiumguss</translation>
    </message>
    <message>
        <source>ASTM B26 356.0-T6: 20 and 30 ksi (from memory); brittle because it parts at 3 % (Shigley takes 5 % as the border)</source>
        <translation>ASTM B26 356.0-T6: 20 und 30 ksi (aus dem Gedächtnis); spröde, weil er bei 3 % reißt (Shigley setzt die Grenze bei 5 %)</translation>
    </message>
    <message>
        <source>handbook value for 356 (from memory)</source>
        <translation>Handbuchwert für 356 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>cast iron</source>
        <translation>Gusseisen</translation>
    </message>
    <message>
        <source>EN 1561 EN-GJL-150, yield is the 0.1 % proof stress (from memory)</source>
        <translation>EN 1561 EN-GJL-150, als Streckgrenze gilt die 0,1-%-Dehngrenze (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>handbook value for grey cast iron (from memory)</source>
        <translation>Handbuchwert für Grauguss (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>EN 1561, yield is the 0.1 % proof stress (from memory)</source>
        <translation>EN 1561, als Streckgrenze gilt die 0,1-%-Dehngrenze (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>EN 1561, a little under its 250 to stand for class 35 too; yield is the 0.1 % proof stress (from memory)</source>
        <translation>EN 1561, etwas unter dessen 250, um auch für Klasse 35 zu gelten; als Streckgrenze gilt die 0,1-%-Dehngrenze (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>EN 1563 EN-GJS-400-15 (from memory)</source>
        <translation>EN 1563 EN-GJS-400-15 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>EN 1563 (from memory)</source>
        <translation>EN 1563 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>malleable iron</source>
        <translation>Temperguss</translation>
    </message>
    <message>
        <source>ASTM A47 grade 32510: 32 and 50 ksi (from memory)</source>
        <translation>ASTM A47 Grade 32510: 32 und 50 ksi (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>handbook value (from memory)</source>
        <translation>Handbuchwert (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>cast steel</source>
        <translation>Stahlguss</translation>
    </message>
    <message>
        <source>ASTM A27 grade 60-30: 30 and 60 ksi (from memory)</source>
        <translation>ASTM A27 Grade 60-30: 30 und 60 ksi (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>as rolled steel, EN 1993-1-1 3.2.6</source>
        <translation>wie Walzstahl, EN 1993-1-1 3.2.6</translation>
    </message>
    <message>
        <source>wrought iron</source>
        <translation>Schweißeisen</translation>
    </message>
    <message>
        <source>historical handbooks: 25 and 48 ksi (from memory)</source>
        <translation>alte Handbücher: 25 und 48 ksi (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>bearing bronze</source>
        <translation>Lagerbronze</translation>
    </message>
    <message>
        <source>ASTM B505 C93200: 17 and 30 ksi, sand cast (from memory)</source>
        <translation>ASTM B505 C93200: 17 und 30 ksi, Sandguss (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>handbook value for brass and bronze (from memory)</source>
        <translation>Handbuchwert für Messing und Bronze (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>C36000 annealed bar, the softest state, handbook value (from memory)</source>
        <translation>C36000 geglühter Stab, der weichste Zustand, Handbuchwert (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>unknown scrap</source>
        <translation>unbekannter Schrott</translation>
    </message>
    <message>
        <source>common practice, no published source; soft old iron can yield at 170 MPa</source>
        <translation>übliche Praxis, keine veröffentlichte Quelle; weiches altes Eisen kann bei 170 MPa fließen</translation>
    </message>
    <message>
        <source>SAE J995 hex nuts (published tables of three suppliers agree)</source>
        <translation>SAE J995 Sechskantmuttern (veröffentlichte Tabellen dreier Lieferanten stimmen überein)</translation>
    </message>
    <message>
        <source>SAE J995 hex nuts: coarse 90 ksi, fine as ASTM A563 grade A (from memory)</source>
        <translation>SAE J995 Sechskantmuttern: grob 90 ksi, fein wie ASTM A563 Grade A (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM A563 hex nuts, not zinc-coated (from memory)</source>
        <translation>ASTM A563 Sechskantmuttern, nicht verzinkt (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM A194 grade 2H hex nuts (from memory)</source>
        <translation>ASTM A194 Grade 2H Sechskantmuttern (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ISO 898-2:1992 Table 5 (from memory)</source>
        <translation>ISO 898-2:1992 Tabelle 5 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ISO 898-2 style 1 (proof loads of a supplier&apos;s table over the stress area agree)</source>
        <translation>ISO 898-2 Typ 1 (Prüfkräfte aus der Tabelle eines Lieferanten durch den Spannungsquerschnitt stimmen überein)</translation>
    </message>
    <message>
        <source>as the weakest standard nut, ASTM A563 grade O zinc-coated, 52 ksi (from memory): common practice</source>
        <translation>wie die schwächste genormte Mutter, ASTM A563 Grade O verzinkt, 52 ksi (aus dem Gedächtnis): übliche Praxis</translation>
    </message>
    <message>
        <source>SAE J429 in Shigley&apos;s Mechanical Engineering Design, 9th ed., Table 8-9</source>
        <translation>SAE J429 in Shigley&apos;s Mechanical Engineering Design, 9. Aufl., Tabelle 8-9</translation>
    </message>
    <message>
        <source>Shigley and Mischke, Mechanical Engineering Design, 5th ed., p. 341</source>
        <translation>Shigley und Mischke, Mechanical Engineering Design, 5. Aufl., S. 341</translation>
    </message>
    <message>
        <source>ISO 898-1 in Shigley&apos;s Mechanical Engineering Design, 9th ed., Table 8-11</source>
        <translation>ISO 898-1 in Shigley&apos;s Mechanical Engineering Design, 9. Aufl., Tabelle 8-11</translation>
    </message>
    <message>
        <source>ISO 898-1 in Shigley&apos;s Mechanical Engineering Design, 9th ed., Table 8-11 (from memory)</source>
        <translation>ISO 898-1 in Shigley&apos;s Mechanical Engineering Design, 9. Aufl., Tabelle 8-11 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASTM A193/A193M; no proof stress there, nine tenths of the yield taken (common practice)</source>
        <translation>ASTM A193/A193M; dort keine Prüfspannung, neun Zehntel der Streckgrenze genommen (übliche Praxis)</translation>
    </message>
    <message>
        <source>ASTM A307 in Shigley and Mischke, 5th ed., p. 342</source>
        <translation>ASTM A307 in Shigley und Mischke, 5. Aufl., S. 342</translation>
    </message>
    <message>
        <source>ISO 3506-1 (from memory); nine tenths of the yield taken as proof (common practice)</source>
        <translation>ISO 3506-1 (aus dem Gedächtnis); neun Zehntel der Streckgrenze als Prüfspannung genommen (übliche Praxis)</translation>
    </message>
    <message>
        <source>hardware-store rod</source>
        <translation>Gewindestange aus dem Baumarkt</translation>
    </message>
    <message>
        <source>as class 4.6: common practice, no published source</source>
        <translation>wie Festigkeitsklasse 4.6: übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>as unknown scrap: common practice, no published source</source>
        <translation>wie unbekannter Schrott: übliche Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>weight: US Standard Gauge, 15 U.S.C. 206; thickness: Manufacturers&apos; Standard, 41.82 lb/ft2 per inch</source>
        <translation>Gewicht: US Standard Gauge, 15 U.S.C. 206; Dicke: Manufacturers&apos; Standard, 41.82 lb/ft2 je Zoll</translation>
    </message>
    <message>
        <source>ASME B1.1-2003 table of series (from memory)</source>
        <translation>ASME B1.1-2003 Reihentabelle (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>BS 84 (from memory)</source>
        <translation>BS 84 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>BS 84, threads per inch in Machinery&apos;s Handbook 31st ed., British Standard Whitworth nuts, Table 1</source>
        <translation>BS 84, Gänge je Zoll in Machinery&apos;s Handbook 31. Aufl., British Standard Whitworth nuts, Tabelle 1</translation>
    </message>
    <message>
        <source>ASME B1.5 general purpose, preferred series (from memory)</source>
        <translation>ASME B1.5 general purpose, Vorzugsreihe (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ISO 261 coarse (from memory)</source>
        <translation>ISO 261 grob (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ISO 2903 preferred pitch (from memory)</source>
        <translation>ISO 2903 Vorzugssteigung (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ISO 7089 (agrees with a published table)</source>
        <translation>ISO 7089 (stimmt mit einer veröffentlichten Tabelle überein)</translation>
    </message>
    <message>
        <source>ISO 7089 (from memory)</source>
        <translation>ISO 7089 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASME B18.21.1 type A narrow (agrees with a published table)</source>
        <translation>ASME B18.21.1 Typ A schmal (stimmt mit einer veröffentlichten Tabelle überein)</translation>
    </message>
    <message>
        <source>ASME B18.21.1 type A narrow (from memory)</source>
        <translation>ASME B18.21.1 Typ A schmal (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>ASME B18.21.1 type A, one width (from memory)</source>
        <translation>ASME B18.21.1 Typ A, eine Breite (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>half</source>
        <translation>die Hälfte</translation>
    </message>
    <message>
        <source>stamp</source>
        <translation>Einprägung</translation>
    </message>
    <message>
        <source>proof</source>
        <translation>Prüflast</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>%1 x %2, the worst takes %3 (%4) against proof %5 x %6 = %7 (%8)</source>
        <translation>%1 x %2, die am stärksten belastete nimmt %3 (%4) gegen Prüfspannung %5 x %6 = %7 (%8)</translation>
    </message>
    <message>
        <source>%1 x %2, the worst takes %3 (%4) against yield %5 x %6 = %7 (%8)</source>
        <translation>%1 x %2, die am stärksten belastete nimmt %3 (%4) gegen Streckgrenze %5 x %6 = %7 (%8)</translation>
    </message>
    <message>
        <source>oiled</source>
        <translation>geölt</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>squeezed</source>
        <translation>gedrückt</translation>
    </message>
    <message>
        <source>assembled</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>Use %1 plate</source>
        <translation>Eine Platte von %1 nehmen</translation>
    </message>
    <message>
        <source>Access holes pass the keeper or bolt with room and leave a land of 1 mm beside layout error and growth (common practice, no published source).</source>
        <translation>Durch die Montagelöcher geht der Keil oder die Schraube mit Spiel; neben Anreißfehler und Aufweitung bleibt 1 mm Auflage (übliche Praxis, keine veröffentlichte Quelle).</translation>
    </message>
    <message>
        <source>The bore is the screw&apos;s clearance hole, ISO 273 medium series (from memory).</source>
        <translation>Die Bohrung ist das Durchgangsloch der Spindel nach ISO 273, Reihe mittel (aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>A washer bears no further out than the nut&apos;s face and twice its thickness, and stays clear of the access holes.</source>
        <translation>Eine Scheibe trägt nicht weiter außen als die Mutterauflage plus ihre doppelte Dicke, und sie bleibt von den Montagelöchern frei.</translation>
    </message>
    <message>
        <source>Bar, %1 by %2, %3 thick</source>
        <translation>Leiste, %1 mal %2, %3 dick</translation>
    </message>
    <message>
        <source>Full ring, %1 across, %2 thick</source>
        <translation>Voller Ring, %1 Durchmesser, %2 dick</translation>
    </message>
    <message>
        <source>Least steel and quick to saw; takes two opposite stations at a time, so the work is done %1 times over.</source>
        <translation>Am wenigsten Stahl und schnell gesägt; nimmt immer zwei gegenüberliegende Stationen, die Arbeit ist also %1-mal zu tun.</translation>
    </message>
    <message>
        <source>Least steel and quick to saw.</source>
        <translation>Am wenigsten Stahl und schnell gesägt.</translation>
    </message>
    <message>
        <source>More rim outside the holes: stiffer and heavier, and needs a larger piece.</source>
        <translation>Mehr Rand außerhalb der Löcher: steifer und schwerer, und es braucht ein größeres Stück.</translation>
    </message>
    <message>
        <source>All stations at once, with the rim no larger than lands and holes ask for.</source>
        <translation>Alle Stationen auf einmal, der Rand nicht größer, als Auflagen und Löcher verlangen.</translation>
    </message>
    <message>
        <source>Needs a thick washer of %1 by %2.</source>
        <translation>Braucht eine dicke Scheibe von %1 mal %2.</translation>
    </message>
    <message>
        <source>%1 x what is wanted</source>
        <translation>das %1-Fache des Verlangten</translation>
    </message>
    <message>
        <source>No plate of these sizes can be checked; see what check says of the job.</source>
        <translation>Keine Platte dieser Größe lässt sich prüfen; nachsehen, was check zum Auftrag sagt.</translation>
    </message>
    <message>
        <source>Laying the plate on each piece</source>
        <translation>Die Platte wird auf jedes Stück gelegt</translation>
    </message>
    <message>
        <source>Checking each thickness and steel</source>
        <translation>Jede Dicke und jeder Stahl wird geprüft</translation>
    </message>
    <message>
        <source>Looking for the best place</source>
        <translation>Der beste Platz wird gesucht</translation>
    </message>
    <message>
        <source>Seeing what nearly fits</source>
        <translation>Was beinahe passt, wird angesehen</translation>
    </message>
    <message>
        <source>%1 of the %2 plates of the stack come out of it</source>
        <translation>nur %1 der %2 Platten des Stapels lassen sich daraus schneiden</translation>
    </message>
    <message>
        <source>too tight to say; lay a paper template on it</source>
        <translation>zu knapp, um es zu sagen; eine Papierschablone auflegen</translation>
    </message>
    <message>
        <source>much too small</source>
        <translation>viel zu klein</translation>
    </message>
    <message>
        <source>holes or bad areas take the room</source>
        <translation>Löcher oder schlechte Stellen nehmen den Platz</translation>
    </message>
    <message>
        <source>fits but for its holes, by %1</source>
        <translation>passt bis auf seine Löcher, es fehlen %1</translation>
    </message>
    <message>
        <source>fits but for its bad areas, by %1</source>
        <translation>passt bis auf seine schlechten Stellen, es fehlen %1</translation>
    </message>
    <message>
        <source>%1 too narrow</source>
        <translation>%1 zu schmal</translation>
    </message>
    <message>
        <source>checked as %1</source>
        <translation>geprüft mit %1</translation>
    </message>
    <message>
        <source>judged as unknown scrap; if it is %1 as guessed: %2</source>
        <translation>als unbekannter Schrott gerechnet; wenn es wie vermutet %1 ist: %2</translation>
    </message>
    <message>
        <source>its hole of %1 serves as the bore</source>
        <translation>sein Loch von %1 dient als Bohrung</translation>
    </message>
    <message>
        <source>holds if %1 stations at a time</source>
        <translation>hält, wenn immer nur %1 Stationen zugleich gedrückt werden</translation>
    </message>
    <message>
        <source>thin, but goes, if %1 stations at a time</source>
        <translation>knapp, aber es geht, wenn immer nur %1 Stationen zugleich gedrückt werden</translation>
    </message>
    <message>
        <source>%1, rest</source>
        <translation>%1, Rest</translation>
    </message>
    <message>
        <source>The rack has no piece called &quot;%1&quot;.</source>
        <translation>Im Regal liegt kein Stück namens „%1“.</translation>
    </message>
    <message>
        <source>The plate does not lie clear of the edges, holes and bad areas of &quot;%1&quot; where it is put: %2 is wanted all round, the cut counted in.</source>
        <translation>Die Platte liegt an ihrem Platz nicht frei von Kanten, Löchern und schlechten Stellen von „%1“: ringsum sind %2 verlangt, der Schnitt mitgerechnet.</translation>
    </message>
    <message>
        <source>Piece from the rack</source>
        <translation>Stück aus dem Regal</translation>
    </message>
    <message>
        <source>the plate lies on &quot;%1&quot;, clear of its edges, holes and bad areas</source>
        <translation>die Platte liegt auf „%1“, frei von Kanten, Löchern und schlechten Stellen</translation>
    </message>
    <message>
        <source>centre at %1, %2</source>
        <translation>Mitte bei %1, %2</translation>
    </message>
    <message>
        <source>centre at %1, %2, turned %3°</source>
        <translation>Mitte bei %1, %2, gedreht um %3°</translation>
    </message>
    <message>
        <source>leaves nothing usable</source>
        <translation>es bleibt nichts Brauchbares</translation>
    </message>
    <message>
        <source>no room</source>
        <translation>kein Platz</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>lies: %1</source>
        <translation>liegt: %1</translation>
    </message>
    <message>
        <source>Left out: %1 (%2): %3</source>
        <translation>Ausgelassen: %1 (%2): %3</translation>
    </message>
    <message>
        <source>No piece will do.</source>
        <translation>Kein Stück reicht.</translation>
    </message>
    <message>
        <source>Take: %1</source>
        <translation>Nehmen: %1</translation>
    </message>
    <message>
        <source>a rack file is a group of figures in braces { }, not %1</source>
        <translation>eine Regaldatei ist eine Gruppe von Angaben in geschweiften Klammern { }, nicht %1</translation>
    </message>
    <message>
        <source>this is a job file, not a rack file</source>
        <translation>dies ist eine Auftragsdatei, keine Regaldatei</translation>
    </message>
    <message>
        <source>the version is missing; a rack file has &quot;platewright_rack&quot;: %1</source>
        <translation>die Version fehlt; eine Regaldatei hat &quot;platewright_rack&quot;: %1</translation>
    </message>
    <message>
        <source>%1 is no version of a rack file; this one reads %2</source>
        <translation>%1 ist keine Version einer Regaldatei; dieses Programm liest %2</translation>
    </message>
    <message>
        <source>needs at least three points; take them in order round the edge</source>
        <translation>braucht mindestens drei Punkte; der Reihe nach um den Rand aufnehmen</translation>
    </message>
    <message>
        <source>the line crosses itself; list the points in order round the edge</source>
        <translation>die Linie kreuzt sich selbst; die Punkte der Reihe nach um den Rand angeben</translation>
    </message>
    <message>
        <source>a hole in a piece is round, a slot, or traced by points; draw a notch as part of the outline</source>
        <translation>ein Loch in einem Stück ist rund, ein Langloch oder mit Punkten abgenommen; eine Kerbe gehört zum Umriss</translation>
    </message>
    <message>
        <source>a slot needs length and width</source>
        <translation>ein Langloch braucht Länge und Breite</translation>
    </message>
    <message>
        <source>is missing; measure it at the thinnest place</source>
        <translation>fehlt; an der dünnsten Stelle messen</translation>
    </message>
    <message>
        <source>the pits are as deep as the piece is thick; nothing sound is left</source>
        <translation>die Rostnarben sind so tief, wie das Stück dick ist; nichts Gesundes bleibt</translation>
    </message>
    <message>
        <source>is missing; give two sides, a diameter or the corners</source>
        <translation>fehlt; zwei Seiten, einen Durchmesser oder die Ecken angeben</translation>
    </message>
    <message>
        <source>are missing; list the corners in order round the edge</source>
        <translation>fehlen; die Ecken der Reihe nach um den Rand angeben</translation>
    </message>
    <message>
        <source>points written twice are counted once</source>
        <translation>doppelt genannte Punkte zählen einmal</translation>
    </message>
    <message>
        <source>Too many pieces: at most %1 can be handled.</source>
        <translation>Zu viele Stücke: höchstens %1 sind möglich.</translation>
    </message>
    <message>
        <source>Must be a list of pieces in brackets [ ].</source>
        <translation>Muss eine Liste von Stücken in eckigen Klammern [ ] sein.</translation>
    </message>
    <message>
        <source>piece %1</source>
        <translation>Stück %1</translation>
    </message>
    <message>
        <source>Must be a group of figures in braces { }.</source>
        <translation>Muss eine Gruppe von Angaben in geschweiften Klammern { } sein.</translation>
    </message>
    <message>
        <source>another piece has this name; called &quot;%1&quot; here</source>
        <translation>ein anderes Stück heißt schon so; hier „%1“ genannt</translation>
    </message>
    <message>
        <source>none is left; passed over</source>
        <translation>keines ist übrig; übergangen</translation>
    </message>
    <message>
        <source>two to %1 pins can be found from readings, not %2</source>
        <translation>aus Ablesungen lassen sich zwei bis %1 Bolzen finden, nicht %2</translation>
    </message>
    <message>
        <source>Needed: readings. Lay the calipers over two pins, or between them</source>
        <translation>Gebraucht werden: Ablesungen. Den Messschieber außen über zwei Bolzen legen oder innen dazwischen</translation>
    </message>
    <message>
        <source>a reading names pin %1 of %2</source>
        <translation>eine Ablesung nennt Bolzen %1 von %2</translation>
    </message>
    <message>
        <source>Needed: how far across one pin is, or readings both over and between the pins</source>
        <translation>Gebraucht wird: der Durchmesser eines Bolzens, oder Ablesungen außen über und innen zwischen den Bolzen</translation>
    </message>
    <message>
        <source>over pins %1 and %2 it reads less than one pin is across</source>
        <translation>außen über die Bolzen %1 und %2 steht weniger, als ein Bolzen dick ist</translation>
    </message>
    <message>
        <source>no pins can be placed so that these readings come out; check them one by one</source>
        <translation>kein Platz der Bolzen ergibt diese Ablesungen; eine nach der anderen prüfen</translation>
    </message>
    <message>
        <source>Missing; the piece has no shape without it.</source>
        <translation>Fehlt; ohne das hat das Stück keine Form.</translation>
    </message>
    <message>
        <source>its corners run clockwise; taken the other way round</source>
        <translation>seine Ecken laufen im Uhrzeigersinn; andersherum genommen</translation>
    </message>
    <message>
        <source>hole %1</source>
        <translation>Loch %1</translation>
    </message>
    <message>
        <source>bad area %1</source>
        <translation>schlechte Stelle %1</translation>
    </message>
    <message>
        <source>%1 is larger than the piece.</source>
        <translation>%1 ist größer als das Stück.</translation>
    </message>
    <message>
        <source>%1 lies off the piece; passed over</source>
        <translation>%1 liegt neben dem Stück; übergangen</translation>
    </message>
    <message>
        <source>%1 runs over the edge; taken as a notch</source>
        <translation>%1 läuft über die Kante; als Kerbe genommen</translation>
    </message>
    <message>
        <source>not written: there is no whole plate to draw. %1</source>
        <translation>nicht geschrieben: es gibt keine ganze Platte zu zeichnen. %1</translation>
    </message>
    <message>
        <source>not the size of a piece: &quot;%1&quot;. Write it like &quot;300 x 400 mm&quot; or &quot;12 in x 20 in&quot;</source>
        <translation>keine Größe eines Stücks: „%1“. So schreiben: „300 x 400 mm“ oder „12 in x 20 in“</translation>
    </message>
    <message>
        <source>%1, its middle at X %2, Y %3, turned by a quarter</source>
        <translation>%1, Mitte bei X %2, Y %3, um ein Viertel gedreht</translation>
    </message>
    <message>
        <source>%1, its middle at X %2, Y %3</source>
        <translation>%1, Mitte bei X %2, Y %3</translation>
    </message>
    <message>
        <source>plates of one piece are of one thickness: &quot;%1&quot; takes %2, &quot;%3&quot; %4</source>
        <translation>Platten aus einem Stück haben eine Dicke: „%1“ braucht %2, „%3“ %4</translation>
    </message>
    <message>
        <source>plates of one piece are cut in one way: process and kerf of &quot;%1&quot; differ</source>
        <translation>Platten aus einem Stück werden auf eine Art geschnitten: Verfahren und Schnittfuge von „%1“ weichen ab</translation>
    </message>
    <message>
        <source>plates of one piece that are cut together have the same thread in the bore, or none</source>
        <translation>Platten, die zusammen aus einem Stück geschnitten werden, haben dasselbe Gewinde in der Bohrung oder keines</translation>
    </message>
    <message>
        <source>X0 Y0 is the low left corner of the piece, %1.</source>
        <translation>X0 Y0 ist die linke untere Ecke des Stücks, %1.</translation>
    </message>
    <message>
        <source>There is no whole plate to cut yet.</source>
        <translation>Es gibt noch keine ganze Platte zu schneiden.</translation>
    </message>
    <message>
        <source>drill the ends, saw and file between</source>
        <translation>Enden bohren, dazwischen sägen und feilen</translation>
    </message>
    <message>
        <source>too narrow to burn, drill the ends, saw and file between</source>
        <translation>zu schmal zum Brennen, Enden bohren, dazwischen sägen und feilen</translation>
    </message>
    <message>
        <source>not written. %1: %2
Add --anyway to write it all the same, marked on its face.</source>
        <translation>nicht geschrieben. %1: %2
Mit --anyway trotzdem schreiben, sichtbar gezeichnet.</translation>
    </message>
    <message>
        <source>Wrote %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a length. Type it like %2.</source>
        <translation>„%1“ ist keine Länge. So eingeben: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no point. Type two figures for each, and a semicolon after it, like %2.</source>
        <translation>„%1“ ist kein Punkt. Je zwei Zahlen eingeben und danach ein Semikolon, etwa %2.</translation>
    </message>
    <message>
        <source>At least three points are needed, in order round the edge.</source>
        <translation>Mindestens drei Punkte werden gebraucht, der Reihe nach um den Rand.</translation>
    </message>
    <message>
        <source>Type the four sides in order and then the diagonal, like %1.</source>
        <translation>Die vier Seiten der Reihe nach eingeben, dann die Diagonale, etwa %1.</translation>
    </message>
    <message>
        <source>These five do not close: the diagonal is too long or too short for the sides. Measure it again, from corner to corner.</source>
        <translation>Diese fünf gehen nicht zusammen: die Diagonale ist zu lang oder zu kurz für die Seiten. Noch einmal von Ecke zu Ecke messen.</translation>
    </message>
    <message>
        <source>The bending of this plate cannot be worked out well enough for a verdict: %1.</source>
        <translation>Die Biegung dieser Platte lässt sich für ein Urteil nicht genau genug ausrechnen: %1.</translation>
    </message>
    <message>
        <source>The rack &quot;%1&quot; lies outside the job&apos;s folder. A job from somebody else could name any file, so it is not read unasked.</source>
        <translation>Das Regal „%1“ liegt außerhalb des Ordners des Auftrags. Ein fremder Auftrag könnte jede Datei nennen, darum wird es nicht ungefragt gelesen.</translation>
    </message>
    <message>
        <source>the equations were not solved: %1 of the load is left over</source>
        <translation>die Gleichungen sind nicht gelöst: %1 der Last bleibt übrig</translation>
    </message>
    <message>
        <source>loads and reactions do not balance: %1 of the load is left over</source>
        <translation>Lasten und Gegenkräfte heben sich nicht auf: %1 der Last bleibt übrig</translation>
    </message>
    <message>
        <source>loads and reactions turn the plate: %1 of load times size is left over</source>
        <translation>Lasten und Gegenkräfte drehen die Platte: %1 von Last mal Größe bleibt übrig</translation>
    </message>
    <message>
        <source>the plate is too finely cut up for a second mesh to compare with</source>
        <translation>die Platte ist zu fein zerteilt für ein zweites Netz zum Vergleich</translation>
    </message>
    <message>
        <source>two meshes of the plate differ by %1 %; %2 % is allowed</source>
        <translation>zwei Netze der Platte weichen um %1 % voneinander ab; erlaubt sind %2 %</translation>
    </message>
    <message>
        <source>its bending could be followed to %1 x the load and no further; wanted %2</source>
        <translation>ihre Biegung ließ sich bis zum %1-fachen der Last verfolgen und nicht weiter; verlangt ist %2</translation>
    </message>
    <message>
        <source>what the load leaves behind could not be followed</source>
        <translation>was die Last zurücklässt, ließ sich nicht verfolgen</translation>
    </message>
    <message>
        <source>brittle, and a sharp inside corner is where it cracks: round it</source>
        <translation>spröde, und an einer scharfen Innenecke reißt sie: die Ecke ausrunden</translation>
    </message>
    <message>
        <source>brittle, and the worst stress is not known: the last mesh moved it by %1 %</source>
        <translation>spröde, und die größte Spannung ist nicht bekannt: das letzte Netz hat sie um %1 % verschoben</translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation>
            <numerusform>%n Sekunde</numerusform>
            <numerusform>%n Sekunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hours</source>
        <translation>
            <numerusform>%n Stunde</numerusform>
            <numerusform>%n Stunden</numerusform>
        </translation>
    </message>
    <message>
        <source>The plate has no symmetry and %1 holes: this takes about %2.</source>
        <translation>Die Platte hat keine Symmetrie und %1 Löcher: das dauert etwa %2.</translation>
    </message>
    <message>
        <source>The plate has %1 holes: this takes about %2.</source>
        <translation>Die Platte hat %1 Löcher: das dauert etwa %2.</translation>
    </message>
    <message>
        <source>If it does not hold, looking for changes that mend it can take up to %1.</source>
        <translation>Hält sie nicht, kann die Suche nach Änderungen, die es beheben, bis zu %1 dauern.</translation>
    </message>
    <message>
        <source>It needs about %1 GB of memory.</source>
        <translation>Gebraucht werden etwa %1 GB Speicher.</translation>
    </message>
    <message>
        <source>is %1 characters long; at most %2 can be handled</source>
        <translation>ist %1 Zeichen lang; höchstens %2 sind möglich</translation>
    </message>
    <message>
        <source>more than %1 keys in one group</source>
        <translation>mehr als %1 Schlüssel in einer Gruppe</translation>
    </message>
    <message>
        <source>the drive does not answer; connect it again, or save somewhere else</source>
        <translation>das Laufwerk antwortet nicht; wieder verbinden oder anderswo speichern</translation>
    </message>
    <message>
        <source>the plate needs more than %1 triangles: it has too many holes, or something in the outline is far too narrow or too small</source>
        <translation>die Platte braucht mehr als %1 Dreiecke: sie hat zu viele Löcher, oder etwas am Umriss ist viel zu schmal oder zu klein</translation>
    </message>
    <message>
        <source>is too small for a bore; 0 means that there is none</source>
        <translation>ist zu klein für eine Bohrung; 0 heißt, dass es keine gibt</translation>
    </message>
    <message>
        <source>Trying a bar, %1 thick</source>
        <translation>Eine Leiste, %1 dick, wird probiert</translation>
    </message>
    <message>
        <source>Trying a ring, %1 thick</source>
        <translation>Ein Ring, %1 dick, wird probiert</translation>
    </message>
    <message>
        <source>Beside the cut only %1 is left at the thinnest; steel thinner than %2 there is not counted.</source>
        <translation>Neben dem Schnitt bleiben an der dünnsten Stelle nur %1; was dort dünner als %2 ist, zählt nicht.</translation>
    </message>
    <message numerus="yes">
        <source>%n parts are scrap: no disc of %1 goes into them.</source>
        <translation>
            <numerusform>%n Teil ist Schrott: es geht keine Scheibe von %1 hinein.</numerusform>
            <numerusform>%n Teile sind Schrott: es geht keine Scheibe von %1 hinein.</numerusform>
        </translation>
    </message>
    <message>
        <source>leaves usable steel, about as much as a piece of %1</source>
        <translation>lässt brauchbaren Stahl übrig, etwa so viel wie ein Stück von %1</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
</context>
<context>
    <name>pw::gui::BentView</name>
    <message>
        <source>How much larger the bend is drawn</source>
        <translation>Wie viel größer die Biegung gezeichnet wird</translation>
    </message>
    <message>
        <source>Bent plate</source>
        <translation>Gebogene Platte</translation>
    </message>
    <message>
        <source>The arrow keys turn it, plus and minus draw the bend larger or smaller, Home starts over.</source>
        <translation>Die Pfeiltasten drehen sie, Plus und Minus zeichnen die Biegung größer oder kleiner, Pos1 beginnt von vorn.</translation>
    </message>
    <message>
        <source>Drag to turn it. Dashes: where the rim was.</source>
        <translation>Ziehen dreht sie. Strichlinie: wo der Rand war.</translation>
    </message>
    <message>
        <source>Not worked out yet. The verdict says what is needed first.</source>
        <translation>Noch nicht ausgerechnet. Das Ergebnis sagt, was zuerst gebraucht wird.</translation>
    </message>
    <message>
        <source>Bend drawn as large as it is</source>
        <translation>Biegung in wahrer Größe gezeichnet</translation>
    </message>
    <message>
        <source>Bend drawn %1 times larger than it is</source>
        <translation>Biegung %1-mal größer gezeichnet, als sie ist</translation>
    </message>
    <message>
        <source>Full load, %1</source>
        <translation>Volle Last, %1</translation>
    </message>
    <message>
        <source>Load %1</source>
        <translation>Last %1</translation>
    </message>
</context>
<context>
    <name>pw::gui::CheckRow</name>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>can take</source>
        <translation>trägt</translation>
    </message>
    <message>
        <source>must take</source>
        <translation>muss tragen</translation>
    </message>
    <message>
        <source>Wanted %1 or more.</source>
        <translation>Verlangt: %1 oder mehr.</translation>
    </message>
    <message>
        <source>there is − it takes = left: %1 − %2 = %3</source>
        <translation>vorhanden − gebraucht = übrig: %1 − %2 = %3</translation>
    </message>
</context>
<context>
    <name>pw::gui::CurveView</name>
    <message>
        <source>Load against bend</source>
        <translation>Last über Biegung</translation>
    </message>
    <message>
        <source>now %1, bent %2</source>
        <translation>jetzt %1, Biegung %2</translation>
    </message>
    <message>
        <source>full load</source>
        <translation>voller Last</translation>
    </message>
    <message>
        <source>1¼ × full load</source>
        <translation>1¼ × volle Last</translation>
    </message>
    <message>
        <source>first yield</source>
        <translation>erstes Fließen</translation>
    </message>
    <message>
        <source>folds later than</source>
        <translation>klappt erst später als</translation>
    </message>
    <message>
        <source>it folds</source>
        <translation>klappt zusammen</translation>
    </message>
    <message>
        <source>%1 × full load</source>
        <translation>%1 × volle Last</translation>
    </message>
    <message>
        <source>Not worked out yet.</source>
        <translation>Noch nicht ausgerechnet.</translation>
    </message>
    <message>
        <source>%1 %2, bent %3</source>
        <translation>%1 %2, Biegung %3</translation>
    </message>
    <message>
        <source>let go from full load it stays bent %1</source>
        <translation>von voller Last entlastet bleibt %1 Biegung</translation>
    </message>
    <message>
        <source>in, centre to stations</source>
        <translation>in, Mitte zu Stationen</translation>
    </message>
    <message>
        <source>mm, centre to stations</source>
        <translation>mm, Mitte zu Stationen</translation>
    </message>
    <message>
        <source>lbf</source>
        <translation>lbf</translation>
    </message>
    <message>
        <source>kN</source>
        <translation>kN</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>× full load</source>
        <translation>× volle Last</translation>
    </message>
    <message>
        <source>%1 of set at full load</source>
        <translation>%1 bleibende Verformung bei voller Last</translation>
    </message>
    <message>
        <source>Comes with the first verdict.</source>
        <translation>Kommt mit dem ersten Ergebnis.</translation>
    </message>
</context>
<context>
    <name>pw::gui::CutPicture</name>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Pierces: %1. Cut: %2, about %3.</source>
        <translation>Lochstiche: %1. Schnitt: %2, etwa %3.</translation>
    </message>
</context>
<context>
    <name>pw::gui::Document</name>
    <message>
        <source>The copy of what it held before, %1, was %2.</source>
        <translation>Die Kopie des früheren Inhalts, %1, wurde %2.</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>Back to what is saved</source>
        <translation>Zurück zum Gespeicherten</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Zurückgeholt</translation>
    </message>
</context>
<context>
    <name>pw::gui::FieldBox</name>
    <message>
        <source>%1: choices</source>
        <translation>%1: Auswahl</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1, angenommen</translation>
    </message>
    <message>
        <source>%1, worked out</source>
        <translation>%1, berechnet</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>gebraucht</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
</context>
<context>
    <name>pw::gui::FieldEditor</name>
    <message>
        <source>A figure belongs here. To take the whole thing out, use the word Remove.</source>
        <translation>Hier gehört eine Zahl hin. Soll das Ganze weg, das Wort „Entfernen“ nehmen.</translation>
    </message>
    <message>
        <source>Not taken yet. Press Enter in the box to use it.</source>
        <translation>Noch nicht übernommen. Eingabetaste in diesem Feld übernimmt es.</translation>
    </message>
</context>
<context>
    <name>pw::gui::FieldText</name>
    <message>
        <source>“%1” is not a number. Type it like %2.</source>
        <translation>„%1“ ist keine Zahl. Schreibweise zum Beispiel: %2.</translation>
    </message>
    <message>
        <source>%1 of what? Fractions are inches here: type %1 in, or a figure in mm.</source>
        <translation>%1 wovon? Brüche sind hier Zoll: %1 in eingeben oder ein Maß in mm.</translation>
    </message>
    <message>
        <source>%1 can be read in two ways. Type %2 or %3.</source>
        <translation>%1 lässt sich auf zwei Arten lesen. %2 oder %3 eingeben.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>“%1” is not a whole number. Type it like 6.</source>
        <translation>„%1“ ist keine ganze Zahl. Schreibweise zum Beispiel: 6.</translation>
    </message>
    <message>
        <source>0.12 or 0.12-0.20</source>
        <translation>0,12 oder 0,12-0,20</translation>
    </message>
</context>
<context>
    <name>pw::gui::Fields</name>
    <message>
        <source>Disc</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Flachstück</translation>
    </message>
    <message>
        <source>Rectangle or square</source>
        <translation>Rechteck oder Quadrat</translation>
    </message>
    <message>
        <source>Unknown scrap</source>
        <translation>Unbekannter Schrott</translation>
    </message>
    <message>
        <source>Cast iron</source>
        <translation>Gusseisen</translation>
    </message>
    <message>
        <source>Cast aluminium</source>
        <translation>Aluminiumguss</translation>
    </message>
    <message>
        <source>Bronze</source>
        <translation>Bronze</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>abgenutzt</translation>
    </message>
    <message>
        <source>rusty</source>
        <translation>rostig</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>What is pulled</source>
        <translation>Was abgezogen wird</translation>
    </message>
    <message>
        <source>What is squeezed</source>
        <translation>Was gedrückt wird</translation>
    </message>
    <message>
        <source>Name of this job</source>
        <translation>Name des Auftrags</translation>
    </message>
    <message>
        <source>The name on the sheet and on the cut file.</source>
        <translation>Der Name auf dem Blatt und auf der Schneiddatei.</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Art der Arbeit</translation>
    </message>
    <message>
        <source>Squeeze springs down</source>
        <translation>Federn niederdrücken</translation>
    </message>
    <message>
        <source>Pull something off</source>
        <translation>Etwas abziehen</translation>
    </message>
    <message>
        <source>Squeeze further</source>
        <translation>Weiter drücken</translation>
    </message>
    <message>
        <source>How far past the assembled length the springs must go until the keepers are free. The keeper&apos;s lip plus 1 mm is common.</source>
        <translation>Wie weit über die Einbaulänge hinaus die Federn gehen müssen, bis die Keile frei sind. Üblich ist die Lippe des Keils plus 1 mm.</translation>
    </message>
    <message>
        <source>Swollen by rust</source>
        <translation>Aufgequollen durch Rost</translation>
    </message>
    <message>
        <source>How much thicker the pack has grown than when it was new. It takes that much of the springs&apos; travel.</source>
        <translation>Wie viel dicker das Paket gegenüber neu geworden ist. So viel nimmt es vom Weg der Federn.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Anything worth keeping with the job.</source>
        <translation>Alles, was beim Auftrag aufgehoben werden soll.</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Stationen</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>The bolts that go into the part.</source>
        <translation>Die Schrauben, die in das Teil gehen.</translation>
    </message>
    <message>
        <source>The pins that are squeezed at once.</source>
        <translation>Die Bolzen, die auf einmal gedrückt werden.</translation>
    </message>
    <message>
        <source>Bolt circle</source>
        <translation>Schraubenlochkreis</translation>
    </message>
    <message>
        <source>Pin circle</source>
        <translation>Lochkreis</translation>
    </message>
    <message>
        <source>Measure over two opposite pins, then take off one pin. 0.5 mm wrong still fits.</source>
        <translation>Über zwei gegenüberliegende Bolzen messen, dann einen Bolzen abziehen. 0,5 mm Fehler passen noch.</translation>
    </message>
    <message>
        <source>Bolt hole</source>
        <translation>Schraubenloch</translation>
    </message>
    <message>
        <source>Access hole</source>
        <translation>Montageloch</translation>
    </message>
    <message>
        <source>The bolt and about 1 mm more.</source>
        <translation>Die Schraube und etwa 1 mm mehr.</translation>
    </message>
    <message>
        <source>Wide enough for the keepers to come out and a pick to reach in: the keeper and 3 mm more.</source>
        <translation>So weit, dass die Keile herauskommen und ein Haken hineinreicht: der Keil und 3 mm mehr.</translation>
    </message>
    <message>
        <source>Keeper</source>
        <translation>Keil</translation>
    </message>
    <message>
        <source>Across the pair of keepers as they sit on the pin. The widest place counts.</source>
        <translation>Über das Keilpaar, wie es auf dem Bolzen sitzt. Die breiteste Stelle zählt.</translation>
    </message>
    <message>
        <source>Retainer</source>
        <translation>Federteller</translation>
    </message>
    <message>
        <source>Across the flat face that the plate will press on. 0.5 mm wrong still fits.</source>
        <translation>Durchmesser der ebenen Fläche, auf die die Platte drückt. 0,5 mm Fehler passen noch.</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>Across one pin, clear of the groove, with the vernier.</source>
        <translation>Ein Bolzen, abseits der Nut, mit dem Messschieber.</translation>
    </message>
    <message>
        <source>Pin sticks out</source>
        <translation>Bolzen steht vor</translation>
    </message>
    <message>
        <source>From the retainer&apos;s face to the pin&apos;s end, assembled. It says how soon the pin lets go of the retainer.</source>
        <translation>Vom Federteller bis zum Bolzenende, eingebaut. Das sagt, wie bald der Bolzen den Federteller loslässt.</translation>
    </message>
    <message>
        <source>Bolt washer</source>
        <translation>Schraubenscheibe</translation>
    </message>
    <message>
        <source>Land across</source>
        <translation>Auflage außen</translation>
    </message>
    <message>
        <source>Across the washer under the bolt&apos;s head.</source>
        <translation>Durchmesser der Scheibe unter dem Schraubenkopf.</translation>
    </message>
    <message>
        <source>Outside of the ring of plate that bears. Empty: the whole retainer bears.</source>
        <translation>Außendurchmesser des Plattenrings, der aufliegt. Leer: der ganze Federteller liegt auf.</translation>
    </message>
    <message>
        <source>First one at</source>
        <translation>Erste bei</translation>
    </message>
    <message>
        <source>The angle of the first station, from three o&apos;clock, turning left.</source>
        <translation>Der Winkel der ersten Station, ab drei Uhr, linksherum.</translation>
    </message>
    <message>
        <source>Hole shape</source>
        <translation>Lochform</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rund</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Langloch</translation>
    </message>
    <message>
        <source>Open to the rim</source>
        <translation>Zum Rand offen</translation>
    </message>
    <message>
        <source>Slot length</source>
        <translation>Langlochlänge</translation>
    </message>
    <message>
        <source>From end to end.</source>
        <translation>Von Ende zu Ende.</translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation>Langlochbreite</translation>
    </message>
    <message>
        <source>Across the slot.</source>
        <translation>Quer über das Langloch.</translation>
    </message>
    <message>
        <source>Slot turned</source>
        <translation>Langloch gedreht</translation>
    </message>
    <message>
        <source>From the ray that runs from the bore through the station.</source>
        <translation>Gegen den Strahl von der Bohrung durch die Station.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Known pull</source>
        <translation>Bekannte Abziehkraft</translation>
    </message>
    <message>
        <source>Total load</source>
        <translation>Gesamtlast</translation>
    </message>
    <message>
        <source>Only if somebody measured it. Leave it empty otherwise: what the fit asks, or what wrench or ram can make, is worked out.</source>
        <translation>Nur, wenn jemand sie gemessen hat. Sonst leer lassen: was der Sitz verlangt oder was Schlüssel oder Zylinder schaffen, wird ausgerechnet.</translation>
    </message>
    <message>
        <source>What all the stations together push back with, squeezed. A range like 6.8-7.5 kN is taken at its high end.</source>
        <translation>Womit alle Stationen zusammen zurückdrücken, zusammengedrückt. Von einem Bereich wie 6,8-7,5 kN gilt das größere Ende.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>At each station</source>
        <translation>Je Station</translation>
    </message>
    <message>
        <source>How many springs like this stand at one pin.</source>
        <translation>Wie viele solcher Federn an einem Bolzen stehen.</translation>
    </message>
    <message>
        <source>Assembled length</source>
        <translation>Einbaulänge</translation>
    </message>
    <message>
        <source>Between its two seats, as it is built in.</source>
        <translation>Zwischen den beiden Sitzen, wie sie eingebaut ist.</translation>
    </message>
    <message>
        <source>Free length</source>
        <translation>Ungespannte Länge</translation>
    </message>
    <message>
        <source>Stand one loose spring up and measure it. 1 mm wrong still serves.</source>
        <translation>Eine lose Feder hinstellen und messen. 1 mm Fehler schadet nicht.</translation>
    </message>
    <message>
        <source>At length</source>
        <translation>Bei Länge</translation>
    </message>
    <message>
        <source>The spring&apos;s length when that force was read.</source>
        <translation>Die Länge der Feder, als die Kraft abgelesen wurde.</translation>
    </message>
    <message>
        <source>it pushes</source>
        <translation>drückt sie</translation>
    </message>
    <message>
        <source>From the manual, a range like 650-725 N, or read off a scale.</source>
        <translation>Aus dem Handbuch, ein Bereich wie 650-725 N, oder auf einer Waage abgelesen.</translation>
    </message>
    <message>
        <source>Rises by</source>
        <translation>Federrate</translation>
    </message>
    <message>
        <source>Force for each millimetre or inch. Two readings give it as well.</source>
        <translation>Kraft je Millimeter oder Zoll. Zwei Ablesungen ergeben sie auch.</translation>
    </message>
    <message>
        <source>Squeezed solid</source>
        <translation>Blocklänge</translation>
    </message>
    <message>
        <source>Squeeze it in the vice until the coils touch, slowly, and measure. Empty: worked out from the wire.</source>
        <translation>Im Schraubstock langsam zusammendrücken, bis sich die Windungen berühren, und messen. Leer: aus dem Draht berechnet.</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Draht</translation>
    </message>
    <message>
        <source>Across the wire, where it is not worn. 0.1 mm matters here.</source>
        <translation>Dicke des Drahts, wo er nicht abgenutzt ist. Hier zählen 0,1 mm.</translation>
    </message>
    <message>
        <source>Coil outside</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>Over the coil, in the middle of the spring.</source>
        <translation>Über die Windung, in der Mitte der Feder.</translation>
    </message>
    <message>
        <source>Coils that move</source>
        <translation>Arbeitende Windungen</translation>
    </message>
    <message>
        <source>All turns less the ones that lie closed at the ends.</source>
        <translation>Alle Windungen ohne die angelegten an den Enden.</translation>
    </message>
    <message>
        <source>Coils in all</source>
        <translation>Windungen gesamt</translation>
    </message>
    <message>
        <source>Count the turns from tip to tip.</source>
        <translation>Die Windungen von Spitze zu Spitze zählen.</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>Do the end coils lie closed, and are they ground flat?</source>
        <translation>Liegen die Endwindungen an, und sind sie plan geschliffen?</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>closed, ground flat</source>
        <translation>angelegt, geschliffen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>angelegt</translation>
    </message>
    <message>
        <source>open, ground flat</source>
        <translation>offen, geschliffen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>How it sits</source>
        <translation>Wie es sitzt</translation>
    </message>
    <message>
        <source>It sits on</source>
        <translation>Art des Sitzes</translation>
    </message>
    <message>
        <source>Nobody knows how tight nearly every hub is. Leave the figures empty then: wrench or ram decides.</source>
        <translation>Wie fest, weiß bei fast keiner Nabe jemand. Dann die Angaben leer lassen: Schlüssel oder Zylinder entscheiden.</translation>
    </message>
    <message>
        <source>A straight shaft, pressed</source>
        <translation>Gerade Welle, aufgepresst</translation>
    </message>
    <message>
        <source>A taper</source>
        <translation>Kegel</translation>
    </message>
    <message>
        <source>A loose fit, held by rust</source>
        <translation>Loser Sitz, durch Rost fest</translation>
    </message>
    <message>
        <source>Shaft across</source>
        <translation>Welle, Durchmesser</translation>
    </message>
    <message>
        <source>Where the hub sits. On a taper: halfway along it.</source>
        <translation>Wo die Nabe sitzt. Bei einem Kegel: auf halber Länge.</translation>
    </message>
    <message>
        <source>Bored through</source>
        <translation>Durchbohrt</translation>
    </message>
    <message>
        <source>The hole through a hollow shaft. A solid one: leave it empty.</source>
        <translation>Das Loch durch eine Hohlwelle. Bei Vollwelle leer lassen.</translation>
    </message>
    <message>
        <source>Sits on a length of</source>
        <translation>Sitzlänge</translation>
    </message>
    <message>
        <source>How much of the shaft is inside the hub.</source>
        <translation>Wie viel von der Welle in der Nabe steckt.</translation>
    </message>
    <message>
        <source>Hub across</source>
        <translation>Nabe, Durchmesser</translation>
    </message>
    <message>
        <source>The hub itself, without flange or spokes.</source>
        <translation>Die Nabe selbst, ohne Flansch oder Speichen.</translation>
    </message>
    <message>
        <source>Shaft larger by</source>
        <translation>Übermaß</translation>
    </message>
    <message>
        <source>How much larger the shaft was than the hole, on the diameter, from a drawing or a like part. A range like 0.02-0.05 mm.</source>
        <translation>Um wie viel die Welle größer war als das Loch, im Durchmesser, nach Zeichnung oder einem gleichen Teil. Ein Bereich wie 0,02-0,05 mm.</translation>
    </message>
    <message>
        <source>Half angle</source>
        <translation>Halber Winkel</translation>
    </message>
    <message>
        <source>Between the taper and the axis. 1 in 10 on the diameter is 2.86 degrees.</source>
        <translation>Zwischen Kegel und Achse. 1 zu 10 im Durchmesser sind 2,86 Grad.</translation>
    </message>
    <message>
        <source>Drawn up by</source>
        <translation>Aufgezogen um</translation>
    </message>
    <message>
        <source>How far the nut drew it on, from hand-tight.</source>
        <translation>Wie weit die Mutter sie aufgezogen hat, ab handfest.</translation>
    </message>
    <message>
        <source>It takes about</source>
        <translation>Braucht etwa</translation>
    </message>
    <message>
        <source>Your own guess, or what came off last time. It goes before every figure of the fit.</source>
        <translation>Eigene Schätzung, oder was es letztes Mal brauchte. Geht vor allen Maßen des Sitzes.</translation>
    </message>
    <message>
        <source>Hub made of</source>
        <translation>Nabe aus</translation>
    </message>
    <message>
        <source>Grey, short chips, rings dull: cast iron. Bolts strip out of it first.</source>
        <translation>Grau, kurze Späne, klingt dumpf: Gusseisen. Schrauben reißen daraus zuerst aus.</translation>
    </message>
    <message>
        <source>Shaft made of</source>
        <translation>Welle aus</translation>
    </message>
    <message>
        <source>The screw pushes on its end. 1045 is common for shafts.</source>
        <translation>Die Spindel drückt auf ihr Ende. Für Wellen ist C45 (1045) üblich.</translation>
    </message>
    <message>
        <source>Rust makes it</source>
        <translation>Rost mal</translation>
    </message>
    <message>
        <source>1 clean, 1.5 rusty, 2.5 rusted fast (common practice).</source>
        <translation>1 sauber, 1,5 rostig, 2,5 festgerostet (übliche Praxis).</translation>
    </message>
    <message>
        <source>Friction</source>
        <translation>Reibung</translation>
    </message>
    <message>
        <source>Empty: 0.10 to 0.35, usual for pulling off.</source>
        <translation>Leer: 0,10 bis 0,35, üblich beim Abziehen.</translation>
    </message>
    <message>
        <source>How the tool grips</source>
        <translation>Wie das Werkzeug greift</translation>
    </message>
    <message>
        <source>Bolts into the hub</source>
        <translation>Schrauben in der Nabe</translation>
    </message>
    <message>
        <source>Bolts that go into tapped holes of the part. None when jaws or legs hold it.</source>
        <translation>Schrauben in Gewindelöchern des Teils. Keine, wenn Klauen oder Zugstangen es halten.</translation>
    </message>
    <message>
        <source>Their thread</source>
        <translation>Ihr Gewinde</translation>
    </message>
    <message>
        <source>Try a screw in the hub&apos;s holes: M12, 1/2-13.</source>
        <translation>Eine Schraube in den Löchern der Nabe probieren: M12, 1/2-13.</translation>
    </message>
    <message>
        <source>Their grade</source>
        <translation>Ihre Güte</translation>
    </message>
    <message>
        <source>Stamped on the heads. No stamp: take the lowest.</source>
        <translation>Auf den Köpfen eingeprägt. Kein Zeichen: die niedrigste nehmen.</translation>
    </message>
    <message>
        <source>Screwed in</source>
        <translation>Eingeschraubt</translation>
    </message>
    <message>
        <source>How deep they go. Count the turns and multiply by the pitch.</source>
        <translation>Wie tief sie hineingehen. Umdrehungen zählen und mit der Steigung malnehmen.</translation>
    </message>
    <message>
        <source>The holes&apos; thread</source>
        <translation>Gewinde der Löcher</translation>
    </message>
    <message>
        <source>Chase it with a tap and look. Rusty threads carry less.</source>
        <translation>Mit dem Gewindebohrer nachschneiden und nachsehen. Rostige Gewinde tragen weniger.</translation>
    </message>
    <message>
        <source>Jaws</source>
        <translation>Klauen</translation>
    </message>
    <message>
        <source>Jaws that hook behind a flange.</source>
        <translation>Klauen, die hinter einen Flansch greifen.</translation>
    </message>
    <message>
        <source>Jaw width</source>
        <translation>Klauenbreite</translation>
    </message>
    <message>
        <source>Along the rim, where it bears.</source>
        <translation>Längs des Rands, wo sie anliegt.</translation>
    </message>
    <message>
        <source>Jaw reaches in</source>
        <translation>Klaue greift ein</translation>
    </message>
    <message>
        <source>From the flange&apos;s rim inward, as far as it bears. The closer to the hub, the better.</source>
        <translation>Vom Flanschrand nach innen, so weit sie anliegt. Je näher an der Nabe, desto besser.</translation>
    </message>
    <message>
        <source>Flange across</source>
        <translation>Flansch, Durchmesser</translation>
    </message>
    <message>
        <source>What the jaws hold on to.</source>
        <translation>Woran die Klauen halten.</translation>
    </message>
    <message>
        <source>Flange root across</source>
        <translation>Flanschwurzel, Durchmesser</translation>
    </message>
    <message>
        <source>Where the flange grows out of the hub, without the rounding.</source>
        <translation>Wo der Flansch aus der Nabe wächst, ohne die Rundung.</translation>
    </message>
    <message>
        <source>Flange thick</source>
        <translation>Flanschdicke</translation>
    </message>
    <message>
        <source>At its root, the thinnest place.</source>
        <translation>An der Wurzel, an der dünnsten Stelle.</translation>
    </message>
    <message>
        <source>Flange made of</source>
        <translation>Flansch aus</translation>
    </message>
    <message>
        <source>A cast flange is what usually breaks.</source>
        <translation>Ein Gussflansch ist das, was meistens bricht.</translation>
    </message>
    <message>
        <source>Legs or studs</source>
        <translation>Zugstangen oder Stehbolzen</translation>
    </message>
    <message>
        <source>Rods between a strongback and the part. None when the plate is bolted on.</source>
        <translation>Stangen zwischen Traverse und Teil. Keine, wenn die Platte angeschraubt ist.</translation>
    </message>
    <message>
        <source>Legs apart</source>
        <translation>Zugstangenabstand</translation>
    </message>
    <message>
        <source>From middle to middle.</source>
        <translation>Von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Leg thread</source>
        <translation>Zugstangengewinde</translation>
    </message>
    <message>
        <source>Over the crests and the pitch: M16, 5/8-11.</source>
        <translation>Über die Gewindespitzen und die Steigung: M16, 5/8-11.</translation>
    </message>
    <message>
        <source>Leg grade</source>
        <translation>Zugstangengüte</translation>
    </message>
    <message>
        <source>Stamped on the end. Threaded rod from a hardware store is soft.</source>
        <translation>Am Ende eingeprägt. Gewindestange aus dem Baumarkt ist weich.</translation>
    </message>
    <message>
        <source>Leg length</source>
        <translation>Zugstangenlänge</translation>
    </message>
    <message>
        <source>Between nut and part. Long legs store more.</source>
        <translation>Zwischen Mutter und Teil. Lange Zugstangen speichern mehr.</translation>
    </message>
    <message>
        <source>Ram</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>On the ram&apos;s plate. 12 t is 118 kN. No ram: leave all of this empty.</source>
        <translation>Auf dem Typenschild. 12 t sind 118 kN. Kein Zylinder: alles hier leer lassen.</translation>
    </message>
    <message>
        <source>Piston area</source>
        <translation>Kolbenfläche</translation>
    </message>
    <message>
        <source>On the ram&apos;s plate, of the ring that pushes.</source>
        <translation>Auf dem Typenschild, die des Rings, der drückt.</translation>
    </message>
    <message>
        <source>Relief valve at</source>
        <translation>Überdruckventil bei</translation>
    </message>
    <message>
        <source>What the pump&apos;s valve lets through: 700 bar, 10,000 psi. Set lower is safer.</source>
        <translation>Was das Ventil der Pumpe durchlässt: 700 bar, 10 000 psi. Niedriger gestellt ist sicherer.</translation>
    </message>
    <message>
        <source>Rod thread</source>
        <translation>Stangengewinde</translation>
    </message>
    <message>
        <source>The rod through the ram: M24, 1-8.</source>
        <translation>Die Stange durch den Zylinder: M24, 1-8.</translation>
    </message>
    <message>
        <source>Rod grade</source>
        <translation>Stangengüte</translation>
    </message>
    <message>
        <source>Stamped on its end. No stamp: take the lowest.</source>
        <translation>Am Ende eingeprägt. Kein Zeichen: die niedrigste nehmen.</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Hub</translation>
    </message>
    <message>
        <source>How far it comes out.</source>
        <translation>Wie weit er ausfährt.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>The part is at</source>
        <translation>Das Teil hat</translation>
    </message>
    <message>
        <source>Hub heated to open the fit. Never a pack with its springs in place.</source>
        <translation>Nabe erwärmt, damit sich der Sitz öffnet. Nie ein Paket mit eingebauten Federn.</translation>
    </message>
    <message>
        <source>The tool is at</source>
        <translation>Das Werkzeug hat</translation>
    </message>
    <message>
        <source>Keep it under 100 degrees C: hot steel is weak.</source>
        <translation>Unter 100 Grad C halten: heißer Stahl ist schwach.</translation>
    </message>
    <message>
        <source>Pushes against</source>
        <translation>Drückt gegen</translation>
    </message>
    <message>
        <source>What holds the other end</source>
        <translation>Was am anderen Ende hält</translation>
    </message>
    <message>
        <source>The shaft itself</source>
        <translation>Die Welle selbst</translation>
    </message>
    <message>
        <source>A bar across the back</source>
        <translation>Ein Gegenhalter quer hinten</translation>
    </message>
    <message>
        <source>A block</source>
        <translation>Ein Klotz</translation>
    </message>
    <message>
        <source>A stop bolt in the shaft&apos;s end</source>
        <translation>Eine Anschlagschraube im Wellenende</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Stop bolt</source>
        <translation>Anschlagschraube</translation>
    </message>
    <message>
        <source>Its thread, like M16.</source>
        <translation>Ihr Gewinde, wie M16.</translation>
    </message>
    <message>
        <source>Its grade</source>
        <translation>Ihre Güte</translation>
    </message>
    <message>
        <source>Stamped on its head. No stamp: take the lowest.</source>
        <translation>Auf dem Kopf eingeprägt. Kein Zeichen: die niedrigste nehmen.</translation>
    </message>
    <message>
        <source>How deep it goes into the shaft. Count the turns and multiply by the pitch.</source>
        <translation>Wie tief sie in die Welle geht. Umdrehungen zählen und mit der Steigung malnehmen.</translation>
    </message>
    <message>
        <source>Its head across</source>
        <translation>Ihr Kopf, Durchmesser</translation>
    </message>
    <message>
        <source>Where it seats on the shaft&apos;s face. Empty: it does not seat, the thread carries all.</source>
        <translation>Wo sie auf der Stirnfläche der Welle aufsitzt. Leer: sie sitzt nicht auf, das Gewinde trägt alles.</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Stützweite</translation>
    </message>
    <message>
        <source>Between the two places the bar rests on.</source>
        <translation>Zwischen den beiden Stellen, auf denen der Gegenhalter liegt.</translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation>Gegenhalterbreite</translation>
    </message>
    <message>
        <source>Across the bar, as it lies.</source>
        <translation>Quer über den Gegenhalter, wie er liegt.</translation>
    </message>
    <message>
        <source>Bar thickness</source>
        <translation>Gegenhalterdicke</translation>
    </message>
    <message>
        <source>In the direction of the pull.</source>
        <translation>In Richtung des Zugs.</translation>
    </message>
    <message>
        <source>Bar steel</source>
        <translation>Gegenhalterstahl</translation>
    </message>
    <message>
        <source>The grade, if you know it.</source>
        <translation>Die Güte, wenn sie bekannt ist.</translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation>Schneiden</translation>
    </message>
    <message>
        <source>Cut with</source>
        <translation>Geschnitten mit</translation>
    </message>
    <message>
        <source>Plasma table</source>
        <translation>Plasmatisch</translation>
    </message>
    <message>
        <source>Torch table</source>
        <translation>Brennschneidtisch</translation>
    </message>
    <message>
        <source>Hand torch</source>
        <translation>Handbrenner</translation>
    </message>
    <message>
        <source>Saw and drill</source>
        <translation>Säge und Bohrer</translation>
    </message>
    <message>
        <source>Mill</source>
        <translation>Fräse</translation>
    </message>
    <message>
        <source>Kerf</source>
        <translation>Schnittfuge</translation>
    </message>
    <message>
        <source>Width of the cut. Cut a slit in scrap and measure it with feelers.</source>
        <translation>Breite des Schnitts. Einen Schlitz in Schrott schneiden und mit der Fühlerlehre messen.</translation>
    </message>
    <message>
        <source>Holes off by</source>
        <translation>Lochlage auf</translation>
    </message>
    <message>
        <source>How far a hole&apos;s centre may be from where it was meant. A table 0.5 mm, by hand 1 mm or more.</source>
        <translation>Wie weit eine Lochmitte neben ihrem Platz liegen kann. Auf dem Tisch 0,5 mm, von Hand 1 mm oder mehr.</translation>
    </message>
    <message>
        <source>Holes grow by</source>
        <translation>Löcher wachsen um</translation>
    </message>
    <message>
        <source>How much larger than drawn a hole comes out, on the radius.</source>
        <translation>Um wie viel größer als gezeichnet ein Loch wird, im Radius.</translation>
    </message>
    <message>
        <source>Margin wanted</source>
        <translation>Verlangte Sicherheit</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>2 is right for sound steel and known springs. Take more when you had to guess.</source>
        <translation>2 ist richtig bei gesundem Stahl und bekannten Federn. Mehr nehmen, wenn geschätzt wurde.</translation>
    </message>
    <message>
        <source>Set at most</source>
        <translation>Bleibt höchstens</translation>
    </message>
    <message>
        <source>What may stay bent when the load is off. 0.02 mm is what a dial can just see.</source>
        <translation>Was nach dem Entlasten krumm bleiben darf. 0,02 mm zeigt eine Messuhr gerade noch.</translation>
    </message>
    <message>
        <source>Stamp it with</source>
        <translation>Einprägen</translation>
    </message>
    <message>
        <source>A round load to mark on the tool. Empty: the design load, rounded up.</source>
        <translation>Eine runde Last zum Einschlagen auf das Werkzeug. Leer: die Auslegungslast, aufgerundet.</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Measure clear of the burnt edge, in three places. Use the thinnest.</source>
        <translation>Abseits der Brennkante an drei Stellen messen. Die dünnste nehmen.</translation>
    </message>
    <message>
        <source>The grade, if a stamp or a certificate says it. Otherwise leave it at unknown scrap.</source>
        <translation>Die Güte, wenn ein Stempel oder Zeugnis sie nennt. Sonst bei unbekanntem Schrott lassen.</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>The finished disc, over its centre.</source>
        <translation>Die fertige Scheibe, über ihre Mitte.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>From end to end. The bore is in the middle.</source>
        <translation>Von Ende zu Ende. Die Bohrung ist in der Mitte.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Across, from edge to edge.</source>
        <translation>Quer, von Kante zu Kante.</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>Round the corners off; sharp ones cut hands.</source>
        <translation>Die Ecken abrunden; scharfe schneiden in die Hände.</translation>
    </message>
    <message>
        <source>Square</source>
        <translation>Eckig</translation>
    </message>
    <message>
        <source>Plates stacked</source>
        <translation>Platten gestapelt</translation>
    </message>
    <message>
        <source>Loose plates on top of each other. Two are twice as strong as one, not four times.</source>
        <translation>Lose Platten aufeinander. Zwei sind doppelt so stark wie eine, nicht viermal.</translation>
    </message>
    <message>
        <source>A file on its edge</source>
        <translation>Feile an der Kante</translation>
    </message>
    <message>
        <source>Draw a file over a clean edge. It bites on steel that bends; it skates on steel that snaps.</source>
        <translation>Mit einer Feile über eine saubere Kante ziehen. Auf Stahl, der sich biegt, greift sie; auf Stahl, der bricht, rutscht sie.</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht versucht</translation>
    </message>
    <message>
        <source>bites</source>
        <translation>greift</translation>
    </message>
    <message>
        <source>skates</source>
        <translation>rutscht</translation>
    </message>
    <message>
        <source>A strip of it, bent</source>
        <translation>Ein Streifen, gebogen</translation>
    </message>
    <message>
        <source>Saw off a strip and bend it flat in the vice.</source>
        <translation>Einen Streifen absägen und im Schraubstock flach umbiegen.</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>snapped</source>
        <translation>gebrochen</translation>
    </message>
    <message>
        <source>Cracks seen</source>
        <translation>Risse gesehen</translation>
    </message>
    <message>
        <source>Look at edges and old holes with a lamp and chalk.</source>
        <translation>Kanten und alte Löcher mit Lampe und Kreide absuchen.</translation>
    </message>
    <message>
        <source>not looked</source>
        <translation>nicht nachgesehen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>Centre and screw</source>
        <translation>Mitte und Spindel</translation>
    </message>
    <message>
        <source>Screw thread</source>
        <translation>Spindelgewinde</translation>
    </message>
    <message>
        <source>Over the crests, and the pitch with a gauge: M20, 3/4-10 UNC, 1-5 ACME, Tr 24x5.</source>
        <translation>Über die Gewindespitzen, und die Steigung mit der Lehre: M20, 3/4-10 UNC, 1-5 ACME, Tr 24x5.</translation>
    </message>
    <message>
        <source>Screw grade</source>
        <translation>Spindelgüte</translation>
    </message>
    <message>
        <source>Stamped on its head or end. No stamp: take the lowest.</source>
        <translation>Auf Kopf oder Ende eingeprägt. Kein Zeichen: die niedrigste nehmen.</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>The plate&apos;s centre hole: the screw and half a millimetre or more.</source>
        <translation>Das Mittelloch der Platte: die Spindel und einen halben Millimeter oder mehr.</translation>
    </message>
    <message>
        <source>Bore tapped</source>
        <translation>Bohrung mit Gewinde</translation>
    </message>
    <message>
        <source>When the plate itself holds the screw: the thread in its bore, like M20.</source>
        <translation>Wenn die Platte selbst die Spindel hält: das Gewinde in ihrer Bohrung, wie M20.</translation>
    </message>
    <message>
        <source>Washer across</source>
        <translation>Scheibe, Durchmesser</translation>
    </message>
    <message>
        <source>Outside of the washer under the nut. It may not cover an access hole.</source>
        <translation>Außendurchmesser der Scheibe unter der Mutter. Sie darf kein Montageloch verdecken.</translation>
    </message>
    <message>
        <source>Washer thick</source>
        <translation>Scheibe, Dicke</translation>
    </message>
    <message>
        <source>The whole stack under the nut. A thin washer does not spread the load.</source>
        <translation>Der ganze Stapel unter der Mutter. Eine dünne Scheibe verteilt die Last nicht.</translation>
    </message>
    <message>
        <source>Bears out to</source>
        <translation>Liegt auf bis</translation>
    </message>
    <message>
        <source>Across the ring in which nut and washer really bear, if you know it. Empty: worked out from nut and washer.</source>
        <translation>Durchmesser des Rings, in dem Mutter und Scheibe wirklich aufliegen, wenn bekannt. Leer: aus Mutter und Scheibe berechnet.</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Auflager</translation>
    </message>
    <message>
        <source>Even all over</source>
        <translation>Überall gleich</translation>
    </message>
    <message>
        <source>Hard and flat</source>
        <translation>Hart und eben</translation>
    </message>
    <message>
        <source>Thread is</source>
        <translation>Gewinde ist</translation>
    </message>
    <message>
        <source>Oil it: a dry thread wastes the wrench and hides the load.</source>
        <translation>Ölen: ein trockenes Gewinde vergeudet den Schlüssel und verbirgt die Last.</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>oiled</source>
        <translation>geölt</translation>
    </message>
    <message>
        <source>with moly paste</source>
        <translation>mit Molypaste</translation>
    </message>
    <message>
        <source>Thread looks</source>
        <translation>Gewinde sieht aus</translation>
    </message>
    <message>
        <source>Wire-brush it and look at the flanks. Worn and damaged threads carry less.</source>
        <translation>Mit der Drahtbürste reinigen und die Flanken ansehen. Abgenutzte und beschädigte Gewinde tragen weniger.</translation>
    </message>
    <message>
        <source>Screws into</source>
        <translation>Schraubt sich</translation>
    </message>
    <message>
        <source>the shaft</source>
        <translation>in die Welle</translation>
    </message>
    <message>
        <source>a bar</source>
        <translation>in einen Gegenhalter</translation>
    </message>
    <message>
        <source>the plate</source>
        <translation>in die Platte</translation>
    </message>
    <message>
        <source>a nut</source>
        <translation>in eine Mutter</translation>
    </message>
    <message>
        <source>which is made of</source>
        <translation>das besteht aus</translation>
    </message>
    <message>
        <source>The part that holds the thread. A soft one strips first.</source>
        <translation>Das Teil, in dem das Gewinde sitzt. Ein weiches reißt zuerst aus.</translation>
    </message>
    <message>
        <source>Thread engaged</source>
        <translation>Einschraubtiefe</translation>
    </message>
    <message>
        <source>How deep the screw really goes in. Count the turns and multiply by the pitch.</source>
        <translation>Wie tief die Spindel wirklich hineingeht. Umdrehungen zählen und mit der Steigung malnehmen.</translation>
    </message>
    <message>
        <source>Nut grade</source>
        <translation>Muttergüte</translation>
    </message>
    <message>
        <source>Stamped on a face of the nut.</source>
        <translation>Auf einer Fläche der Mutter eingeprägt.</translation>
    </message>
    <message>
        <source>Nut height</source>
        <translation>Mutterhöhe</translation>
    </message>
    <message>
        <source>Thread in the nut, without the chamfers.</source>
        <translation>Gewinde in der Mutter, ohne die Fasen.</translation>
    </message>
    <message>
        <source>What turns</source>
        <translation>Was sich dreht</translation>
    </message>
    <message>
        <source>the nut</source>
        <translation>die Mutter</translation>
    </message>
    <message>
        <source>the screw</source>
        <translation>die Spindel</translation>
    </message>
    <message>
        <source>Stands off</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>From the face the screw enters to the faces the plate bears on, assembled. A straight edge over the retainers helps.</source>
        <translation>Von der Fläche, in die die Spindel geht, zu den Flächen, auf denen die Platte aufliegt, eingebaut. Ein Lineal über die Federteller hilft.</translation>
    </message>
    <message>
        <source>Usable thread</source>
        <translation>Nutzbares Gewinde</translation>
    </message>
    <message>
        <source>Thread from that face to the free end of the screw.</source>
        <translation>Gewinde von jener Fläche bis zum freien Ende der Spindel.</translation>
    </message>
    <message>
        <source>Thread from its tip</source>
        <translation>Gewinde ab Spitze</translation>
    </message>
    <message>
        <source>From the free end back to the plain shank. Empty: threaded all the way.</source>
        <translation>Vom freien Ende zurück bis zum glatten Schaft. Leer: Gewinde durchgehend.</translation>
    </message>
    <message>
        <source>Stands free</source>
        <translation>Steht frei</translation>
    </message>
    <message>
        <source>From the plate to the shaft&apos;s end when the pull begins, and what it must still come. A long thin screw buckles.</source>
        <translation>Von der Platte zum Wellenende, wenn das Ziehen beginnt, und was noch kommen muss. Eine lange dünne Spindel knickt aus.</translation>
    </message>
    <message>
        <source>Point across</source>
        <translation>Spitze, Durchmesser</translation>
    </message>
    <message>
        <source>The flat end that pushes on the shaft. Empty: the root of the thread.</source>
        <translation>Das ebene Ende, das auf die Welle drückt. Leer: der Gewindekern.</translation>
    </message>
    <message>
        <source>Wrench length</source>
        <translation>Schlüssellänge</translation>
    </message>
    <message>
        <source>From the nut&apos;s centre to the middle of your hand.</source>
        <translation>Von der Mitte der Mutter bis zur Mitte der Hand.</translation>
    </message>
    <message>
        <source>Hand pull</source>
        <translation>Handkraft</translation>
    </message>
    <message>
        <source>A puller is loaded by whoever leans on it. 400 N is a strong pull with one arm (common practice).</source>
        <translation>Einen Abzieher belastet, wer sich daranhängt. 400 N sind ein kräftiger Zug mit einem Arm (übliche Praxis).</translation>
    </message>
    <message>
        <source>250 N is a firm pull with one arm (common practice).</source>
        <translation>250 N sind ein fester Zug mit einem Arm (übliche Praxis).</translation>
    </message>
    <message>
        <source>Hammer on it</source>
        <translation>Darauf schlagen</translation>
    </message>
    <message>
        <source>A blow on the loaded screw counts half as much again. Never on a ram, a brittle plate or a cast flange.</source>
        <translation>Ein Schlag auf die belastete Spindel zählt die Hälfte mehr. Nie auf einen Zylinder, eine spröde Platte oder einen Gussflansch.</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Polygon, corner by corner</source>
        <translation>Vieleck, Ecke für Ecke</translation>
    </message>
    <message>
        <source>Other holes and room</source>
        <translation>Weitere Löcher und Freiraum</translation>
    </message>
    <message>
        <source>Piece of steel</source>
        <translation>Stahlstück</translation>
    </message>
    <message>
        <source>Rack file</source>
        <translation>Regaldatei</translation>
    </message>
    <message>
        <source>The file with the pieces you have. It lies beside the job unless its whole path is typed.</source>
        <translation>Die Datei mit den Stücken, die Sie haben. Sie liegt beim Auftrag, außer es wird der ganze Pfad eingegeben.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Picking one takes its thickness, steel and tests over, and puts the plate where it fits.</source>
        <translation>Mit der Wahl werden Dicke, Stahl und Proben übernommen, und die Platte wird dorthin gelegt, wo sie passt.</translation>
    </message>
    <message>
        <source>Middle at, along</source>
        <translation>Mitte bei, längs</translation>
    </message>
    <message>
        <source>Where the plate&apos;s middle lies on the piece, along the piece. A disc, bar or rectangle is measured from its own middle.</source>
        <translation>Wo die Mitte der Platte auf dem Stück liegt, längs gemessen. Bei Scheibe, Stab oder Rechteck zählt es von dessen eigener Mitte aus.</translation>
    </message>
    <message>
        <source>Middle at, across</source>
        <translation>Mitte bei, quer</translation>
    </message>
    <message>
        <source>The same across the piece.</source>
        <translation>Dasselbe quer zum Stück.</translation>
    </message>
    <message>
        <source>Plate turned</source>
        <translation>Platte gedreht</translation>
    </message>
    <message>
        <source>How far the plate is turned on the piece, to the left.</source>
        <translation>Wie weit die Platte auf dem Stück gedreht liegt, linksherum.</translation>
    </message>
</context>
<context>
    <name>pw::gui::FiguresPanel</name>
    <message>
        <source>Figures of the job</source>
        <translation>Angaben zum Auftrag</translation>
    </message>
    <message>
        <source>From the springs</source>
        <translation>Aus den Federn</translation>
    </message>
    <message>
        <source>Known total</source>
        <translation>Gesamtlast</translation>
    </message>
    <message>
        <source>Where the load comes from</source>
        <translation>Woher die Last kommt</translation>
    </message>
    <message>
        <source>Load from the springs</source>
        <translation>Last aus den Federn</translation>
    </message>
    <message>
        <source>A known total counts instead of the springs.</source>
        <translation>Statt der Federn zählt eine bekannte Gesamtlast.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove spring %1</source>
        <translation>Feder %1 entfernen</translation>
    </message>
    <message>
        <source>Remove spring</source>
        <translation>Feder entfernen</translation>
    </message>
    <message>
        <source>Spring %1</source>
        <translation>Feder %1</translation>
    </message>
    <message>
        <source>Remove reading %1</source>
        <translation>Ablesung %1 entfernen</translation>
    </message>
    <message>
        <source>Remove reading</source>
        <translation>Ablesung entfernen</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Ablesung dazu</translation>
    </message>
    <message>
        <source>Wire, coils and rate</source>
        <translation>Draht, Windungen und Federrate</translation>
    </message>
    <message>
        <source>Add a spring</source>
        <translation>Feder dazu</translation>
    </message>
    <message>
        <source>Add a spring inside it</source>
        <translation>Feder darin dazu</translation>
    </message>
</context>
<context>
    <name>pw::gui::GroupHeader</name>
    <message>
        <source>%1. Something is needed here.</source>
        <translation>%1. Hier wird etwas gebraucht.</translation>
    </message>
</context>
<context>
    <name>pw::gui::HelpPages</name>
    <message>
        <source>A first job</source>
        <translation>Ein erster Auftrag</translation>
    </message>
    <message>
        <source>How to measure</source>
        <translation>Wie gemessen wird</translation>
    </message>
    <message>
        <source>What each check means</source>
        <translation>Was jede Prüfung bedeutet</translation>
    </message>
    <message>
        <source>What is assumed</source>
        <translation>Was angenommen wird</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>The window</source>
        <translation>Das Fenster</translation>
    </message>
    <message>
        <source>What each field asks for and how to get it at the bench. Click a name to open its field.</source>
        <translation>Wonach jedes Feld fragt und wie man es in der Werkstatt herausbekommt. Ein Klick auf einen Namen öffnet sein Feld.</translation>
    </message>
    <message>
        <source>One spring</source>
        <translation>Eine Feder</translation>
    </message>
    <message>
        <source>When something is pulled off</source>
        <translation>Wenn etwas abgezogen wird</translation>
    </message>
</context>
<context>
    <name>pw::gui::HelpScenes</name>
    <message>
        <source>Nut</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>Washer</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Retainer</source>
        <translation>Federteller</translation>
    </message>
    <message>
        <source>Spring</source>
        <translation>Feder</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>Keeper</source>
        <translation>Keil</translation>
    </message>
    <message>
        <source>Access hole</source>
        <translation>Montageloch</translation>
    </message>
    <message>
        <source>Stud</source>
        <translation>Stiftschraube</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Assembled</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>Squeezed, keepers out</source>
        <translation>Gedrückt, Keile heraus</translation>
    </message>
    <message>
        <source>Let up, springs free</source>
        <translation>Abgelassen, Federn frei</translation>
    </message>
    <message>
        <source>Pin circle</source>
        <translation>Lochkreis</translation>
    </message>
    <message>
        <source>Land</source>
        <translation>Auflage</translation>
    </message>
    <message>
        <source>Steel left</source>
        <translation>Reststeg</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>Bolts into the hub</source>
        <translation>Schrauben in der Nabe</translation>
    </message>
    <message>
        <source>Hub</source>
        <translation>Nabe</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>Stand here, beside it</source>
        <translation>Hier stehen, daneben</translation>
    </message>
    <message>
        <source>In line: nobody</source>
        <translation>In der Achse: niemand</translation>
    </message>
</context>
<context>
    <name>pw::gui::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Pages of the help</source>
        <translation>Seiten der Hilfe</translation>
    </message>
    <message>
        <source>Page of the help</source>
        <translation>Seite der Hilfe</translation>
    </message>
</context>
<context>
    <name>pw::gui::JobFiles</name>
    <message>
        <source>Unsaved changes cannot be kept safe just now: %1. Save the job soon.</source>
        <translation>Ungespeichertes lässt sich gerade nicht sichern: %1. Den Auftrag bald speichern.</translation>
    </message>
    <message>
        <source>Unsaved changes cannot be kept safe</source>
        <translation>Ungespeichertes lässt sich nicht sichern</translation>
    </message>
    <message>
        <source>A new job</source>
        <translation>Ein neuer Auftrag</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>%1 has changes that were not saved when the program stopped, %2.</source>
        <translation>%1 hat Änderungen, die beim Anhalten des Programms nicht gespeichert waren, %2.</translation>
    </message>
    <message>
        <source>Its file was saved after that.</source>
        <translation>Die Datei wurde danach noch gespeichert.</translation>
    </message>
    <message>
        <source>(%1 more after this one.)</source>
        <translation>(Noch %1 nach diesem.)</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Another window has taken it already.</source>
        <translation>Ein anderes Fenster hat ihn schon genommen.</translation>
    </message>
    <message>
        <source>%1 could not be opened: %2</source>
        <translation>%1 ließ sich nicht öffnen: %2</translation>
    </message>
    <message>
        <source>%1 is open in another window too. Of two that save, the second is asked before anything is overwritten.</source>
        <translation>%1 ist noch in einem anderen Fenster offen. Wenn zwei speichern, wird der zweite gefragt, bevor etwas überschrieben wird.</translation>
    </message>
    <message>
        <source>%1 could not be saved: %2. %3</source>
        <translation>%1 ließ sich nicht speichern: %2. %3</translation>
    </message>
    <message>
        <source>The job is still here, and kept safe until it is saved.</source>
        <translation>Der Auftrag ist noch hier und gesichert, bis er gespeichert ist.</translation>
    </message>
    <message>
        <source>The job is still here.</source>
        <translation>Der Auftrag ist noch hier.</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>%1 is saved. %2</source>
        <translation>%1 ist gespeichert. %2</translation>
    </message>
    <message>
        <source>Save the job</source>
        <translation>Auftrag speichern</translation>
    </message>
    <message>
        <source>Jobs (*.plate.json)</source>
        <translation>Aufträge (*.plate.json)</translation>
    </message>
    <message>
        <source>%1 could not be read: %2. The job is as it was.</source>
        <translation>%1 ließ sich nicht lesen: %2. Der Auftrag ist, wie er war.</translation>
    </message>
    <message>
        <source>Back to what %1 holds. Undo brings back what stood here.</source>
        <translation>Zurück zum Inhalt von %1. Rückgängig holt wieder, was hier stand.</translation>
    </message>
    <message>
        <source>%1 is no longer where it was. The job is still here.</source>
        <translation>%1 ist nicht mehr, wo es war. Der Auftrag ist noch hier.</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation>Noch einmal speichern</translation>
    </message>
    <message>
        <source>Someone else has changed %1 on the disk. Here it stands as it was.</source>
        <translation>Jemand anders hat %1 auf dem Datenträger geändert. Hier steht es, wie es war.</translation>
    </message>
    <message>
        <source>Take theirs</source>
        <translation>Deren Fassung nehmen</translation>
    </message>
    <message>
        <source>Not saved: someone else has changed %1 since it was read here. Saved over, theirs stays as %1~.</source>
        <translation>Nicht gespeichert: jemand anders hat %1 geändert, seit es hier gelesen wurde. Wird darüber gespeichert, bleibt deren Fassung als %1~.</translation>
    </message>
    <message>
        <source>Save mine over it</source>
        <translation>Meine darüber speichern</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keiner</translation>
    </message>
</context>
<context>
    <name>pw::gui::LadderView</name>
    <message>
        <source>Working out every stock thickness…</source>
        <translation>Alle handelsüblichen Dicken werden gerechnet…</translation>
    </message>
    <message>
        <source>Comes when the figures it needs are there.</source>
        <translation>Kommt, wenn die nötigen Angaben da sind.</translation>
    </message>
    <message>
        <source>now %1</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>set, in</source>
        <translation>Rest in</translation>
    </message>
    <message>
        <source>set, mm</source>
        <translation>Rest mm</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>have</source>
        <translation>da</translation>
    </message>
    <message>
        <source>buy</source>
        <translation>kaufen</translation>
    </message>
    <message>
        <source>%1 thinner</source>
        <translation>%1 dünner</translation>
    </message>
    <message>
        <source>%1 thicker</source>
        <translation>%1 dicker</translation>
    </message>
    <message>
        <source>Thickness ladder</source>
        <translation>Dickenleiter</translation>
    </message>
    <message>
        <source>Left and right go from thickness to thickness, Enter takes one.</source>
        <translation>Links und rechts geht von Dicke zu Dicke, Eingabe nimmt eine.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2 × wanted</source>
        <translation>%1, %2 × verlangt</translation>
    </message>
    <message>
        <source>Not for want of strength, but for: %1.</source>
        <translation>Nicht wegen der Festigkeit, sondern wegen: %1.</translation>
    </message>
    <message>
        <source>First to give: %1.</source>
        <translation>Zuerst gibt nach: %1.</translation>
    </message>
    <message>
        <source>working it out</source>
        <translation>wird gerechnet</translation>
    </message>
    <message>
        <source>none holds</source>
        <translation>keine hält</translation>
    </message>
    <message>
        <source>Thinnest that holds: %1</source>
        <translation>Dünnste, die hält: %1</translation>
    </message>
    <message>
        <source>holds from %1</source>
        <translation>hält ab %1</translation>
    </message>
    <message>
        <source>Enter takes it.</source>
        <translation>Eingabe nimmt sie.</translation>
    </message>
    <message>
        <source>A piece this thick is on the rack.</source>
        <translation>Ein so dickes Stück liegt im Regal.</translation>
    </message>
</context>
<context>
    <name>pw::gui::LowerStrip</name>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>What stands at the left of the strip</source>
        <translation>Was links im Streifen steht</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>What the strip shows</source>
        <translation>Was der Streifen zeigt</translation>
    </message>
    <message>
        <source>Fold</source>
        <translation>Zuklappen</translation>
    </message>
    <message>
        <source>Fold the lower strip</source>
        <translation>Den unteren Streifen zuklappen</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Aufklappen</translation>
    </message>
    <message>
        <source>Open the lower strip</source>
        <translation>Den unteren Streifen aufklappen</translation>
    </message>
</context>
<context>
    <name>pw::gui::NewestWork</name>
    <message>
        <source>the work was stopped</source>
        <translation>die Arbeit wurde abgebrochen</translation>
    </message>
    <message>
        <source>an unknown fault</source>
        <translation>ein unbekannter Fehler</translation>
    </message>
</context>
<context>
    <name>pw::gui::NoticeBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>pw::gui::Outputs</name>
    <message>
        <source>Cut file, finished size…</source>
        <translation>Schneiddatei, Fertigmaß…</translation>
    </message>
    <message>
        <source>Cut file</source>
        <translation>Schneiddatei</translation>
    </message>
    <message>
        <source>Drawing or program for the table (*.dxf *.svg *.ngc)</source>
        <translation>Zeichnung oder Programm für den Tisch (*.dxf *.svg *.ngc)</translation>
    </message>
    <message>
        <source>Cut file, path of the torch…</source>
        <translation>Schneiddatei, Bahn des Brenners…</translation>
    </message>
    <message>
        <source>Path of the torch</source>
        <translation>Bahn des Brenners</translation>
    </message>
    <message>
        <source>Drawing of the path (*.dxf *.svg)</source>
        <translation>Zeichnung der Bahn (*.dxf *.svg)</translation>
    </message>
    <message>
        <source>Cut file for old tables…</source>
        <translation>Schneiddatei für alte Tische…</translation>
    </message>
    <message>
        <source>Cut file for old tables</source>
        <translation>Schneiddatei für alte Tische</translation>
    </message>
    <message>
        <source>DXF release 12 (*.dxf)</source>
        <translation>DXF Release 12 (*.dxf)</translation>
    </message>
    <message>
        <source>Program for the table…</source>
        <translation>Programm für den Tisch…</translation>
    </message>
    <message>
        <source>Program for the table</source>
        <translation>Programm für den Tisch</translation>
    </message>
    <message>
        <source>RS-274 program (*.ngc)</source>
        <translation>RS-274-Programm (*.ngc)</translation>
    </message>
    <message>
        <source>Solid of the plate…</source>
        <translation>Volumenmodell der Platte…</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Volumenmodell</translation>
    </message>
    <message>
        <source>Solid (*.step *.stp)</source>
        <translation>Volumenmodell (*.step *.stp)</translation>
    </message>
    <message>
        <source>Solid of the whole stack…</source>
        <translation>Volumenmodell des ganzen Aufbaus…</translation>
    </message>
    <message>
        <source>Solid of the stack</source>
        <translation>Volumenmodell des Aufbaus</translation>
    </message>
    <message>
        <source>Shop sheet…</source>
        <translation>Werkstattblatt…</translation>
    </message>
    <message>
        <source>Shop sheet</source>
        <translation>Werkstattblatt</translation>
    </message>
    <message>
        <source>Paper (*.pdf)</source>
        <translation>Papier (*.pdf)</translation>
    </message>
    <message>
        <source>Paper template…</source>
        <translation>Papierschablone…</translation>
    </message>
    <message>
        <source>Paper template</source>
        <translation>Papierschablone</translation>
    </message>
    <message>
        <source>Report as text…</source>
        <translation>Bericht als Text…</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>Report as JSON…</source>
        <translation>Bericht als JSON…</translation>
    </message>
    <message>
        <source>JSON (*.json)</source>
        <translation>JSON (*.json)</translation>
    </message>
</context>
<context>
    <name>pw::gui::PartLists</name>
    <message>
        <source>Other holes</source>
        <translation>Weitere Löcher</translation>
    </message>
    <message>
        <source>Add a hole</source>
        <translation>Loch dazu</translation>
    </message>
    <message>
        <source>What stands in the way</source>
        <translation>Was im Weg steht</translation>
    </message>
    <message>
        <source>Add what stands in the way</source>
        <translation>Hindernis dazu</translation>
    </message>
    <message>
        <source>Corners, turning left</source>
        <translation>Ecken, linksherum</translation>
    </message>
    <message>
        <source>Corner %1 at %2</source>
        <translation>Ecke %1 bei %2</translation>
    </message>
    <message>
        <source>Add a corner after it</source>
        <translation>Ecke danach dazu</translation>
    </message>
    <message>
        <source>Add a corner after corner %1</source>
        <translation>Ecke nach Ecke %1 dazu</translation>
    </message>
    <message>
        <source>Round it off, radius %1</source>
        <translation>Abrunden, Radius %1</translation>
    </message>
    <message>
        <source>Round off corner %1</source>
        <translation>Ecke %1 abrunden</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove corner %1</source>
        <translation>Ecke %1 entfernen</translation>
    </message>
    <message>
        <source>Calipers on the pins</source>
        <translation>Messschieber an den Bolzen</translation>
    </message>
    <message>
        <source>Fill in what you can, over the pins or between them. What stays empty does not count.</source>
        <translation>Eintragen, was geht, außen über die Bolzen oder innen dazwischen. Was leer bleibt, zählt nicht.</translation>
    </message>
    <message>
        <source>Number the pins turning left as you look down on them. Then read pairs of them, and what the readings come to is worked out.</source>
        <translation>Die Bolzen von oben gesehen linksherum nummerieren. Dann paarweise messen; was die Ablesungen ergeben, wird berechnet.</translation>
    </message>
    <message>
        <source>Read neighbours</source>
        <translation>Nachbarn messen</translation>
    </message>
    <message>
        <source>Read opposite pins</source>
        <translation>Gegenüberliegende Bolzen messen</translation>
    </message>
    <message>
        <source>Read every second pin</source>
        <translation>Jeden zweiten Bolzen messen</translation>
    </message>
    <message>
        <source>Take one even circle</source>
        <translation>Einen gleichmäßigen Kreis nehmen</translation>
    </message>
    <message>
        <source>Pin circle from the readings</source>
        <translation>Lochkreis aus den Ablesungen</translation>
    </message>
    <message>
        <source>Take each pin&apos;s own place</source>
        <translation>Jeden Bolzen an seinem Platz nehmen</translation>
    </message>
    <message>
        <source>Pins from the readings</source>
        <translation>Bolzen aus den Ablesungen</translation>
    </message>
    <message>
        <source>Remove the readings</source>
        <translation>Ablesungen entfernen</translation>
    </message>
    <message>
        <source>Remove the caliper readings</source>
        <translation>Ablesungen des Messschiebers entfernen</translation>
    </message>
    <message>
        <source>Each station</source>
        <translation>Jede Station</translation>
    </message>
    <message>
        <source>Add a station</source>
        <translation>Station dazu</translation>
    </message>
    <message>
        <source>Place them evenly on a circle</source>
        <translation>Gleichmäßig auf einen Kreis setzen</translation>
    </message>
    <message>
        <source>Place stations evenly</source>
        <translation>Stationen gleichmäßig setzen</translation>
    </message>
    <message>
        <source>Place each by itself</source>
        <translation>Jede für sich setzen</translation>
    </message>
    <message>
        <source>Place each station by itself</source>
        <translation>Jede Station für sich setzen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a place, x and y</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Right of the bore</source>
        <translation>Rechts der Bohrung</translation>
    </message>
    <message>
        <source>From the bore&apos;s centre to its own centre, to the right. Left of it is minus.</source>
        <translation>Von der Mitte der Bohrung zur eigenen Mitte, nach rechts. Links davon ist minus.</translation>
    </message>
    <message>
        <source>Above the bore</source>
        <translation>Über der Bohrung</translation>
    </message>
    <message>
        <source>From the bore&apos;s centre to its own centre, up on the plan. Below it is minus.</source>
        <translation>Von der Mitte der Bohrung zur eigenen Mitte, in der Draufsicht nach oben. Darunter ist minus.</translation>
    </message>
    <message>
        <source>Hole %1, slot %2 × %3 at %4</source>
        <translation>Loch %1, Langloch %2 × %3 bei %4</translation>
    </message>
    <message>
        <source>Hole %1, Ø%2 at %3</source>
        <translation>Loch %1, Ø%2 bei %3</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>The finished hole.</source>
        <translation>Das fertige Loch.</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rund</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Langloch</translation>
    </message>
    <message>
        <source>Slot length</source>
        <translation>Langlochlänge</translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation>Langlochbreite</translation>
    </message>
    <message>
        <source>The finished slot, its round ends counted in.</source>
        <translation>Das fertige Langloch, die runden Enden mitgezählt.</translation>
    </message>
    <message>
        <source>Slot turned</source>
        <translation>Langloch gedreht</translation>
    </message>
    <message>
        <source>From three o&apos;clock, turning left.</source>
        <translation>Ab drei Uhr, linksherum.</translation>
    </message>
    <message>
        <source>Made by</source>
        <translation>Gemacht durch</translation>
    </message>
    <message>
        <source>Burned where it is wide enough for that, or drilled in any case: a burned edge is hard and rough.</source>
        <translation>Gebrannt, wo es dafür weit genug ist, oder auf jeden Fall gebohrt: eine Brennkante ist hart und rau.</translation>
    </message>
    <message>
        <source>Burning, if wide enough</source>
        <translation>Brennen, wenn weit genug</translation>
    </message>
    <message>
        <source>Drilling</source>
        <translation>Bohren</translation>
    </message>
    <message>
        <source>Remove hole %1</source>
        <translation>Loch %1 entfernen</translation>
    </message>
    <message>
        <source>Pins %1 and %2</source>
        <translation>Bolzen %1 und %2</translation>
    </message>
    <message>
        <source>%1 to %2, over</source>
        <translation>%1 zu %2, außen</translation>
    </message>
    <message>
        <source>%1 to %2, between</source>
        <translation>%1 zu %2, innen</translation>
    </message>
    <message>
        <source>Calipers outside both pins, square across. 0.1 mm is good.</source>
        <translation>Messschieber außen an beide Bolzen, rechtwinklig angesetzt. Auf 0,1 mm genau ist gut.</translation>
    </message>
    <message>
        <source>Inside jaws between the two pins, the least that you find.</source>
        <translation>Mit den Innenschnäbeln zwischen die beiden Bolzen; das kleinste Maß gilt.</translation>
    </message>
    <message>
        <source>In the way %1</source>
        <translation>Hindernis %1</translation>
    </message>
    <message>
        <source>%1, Ø%2 at %3</source>
        <comment>what stands in the way, how wide, where</comment>
        <translation>%1, Ø%2 bei %3</translation>
    </message>
    <message>
        <source>Room it wants</source>
        <translation>Platzbedarf</translation>
    </message>
    <message>
        <source>Across the stud or boss, and what room it wants besides.</source>
        <translation>Der Durchmesser von Stiftschraube oder Auge und dazu der Platz, der rundum frei bleiben muss.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>A stud, a boss, a pipe.</source>
        <translation>Eine Stiftschraube, ein Auge, ein Rohr.</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>Station %1 at %2 carries nothing</source>
        <translation>Station %1 bei %2 trägt nichts</translation>
    </message>
    <message>
        <source>Station %1 at %2, share %3</source>
        <translation>Station %1 bei %2, Anteil %3</translation>
    </message>
    <message>
        <source>Station %1 at %2</source>
        <translation>Station %1 bei %2</translation>
    </message>
    <message>
        <source>Carries</source>
        <translation>Trägt</translation>
    </message>
    <message>
        <source>No: there is a hole, and nothing presses on the plate there.</source>
        <translation>Nein: dort ist ein Loch, und nichts drückt auf die Platte.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no, nothing</source>
        <translation>nein, nichts</translation>
    </message>
    <message>
        <source>Its share</source>
        <translation>Ihr Anteil</translation>
    </message>
    <message>
        <source>Beside the others: 1 is as much as they carry, 0.5 half as much, 2 twice.</source>
        <translation>Gegenüber den anderen: 1 ist so viel, wie sie tragen, 0,5 die Hälfte, 2 das Doppelte.</translation>
    </message>
    <message>
        <source>Remove station %1</source>
        <translation>Station %1 entfernen</translation>
    </message>
</context>
<context>
    <name>pw::gui::PieceChoice</name>
    <message>
        <source>This piece is %1 thick, and the plate is worked out at %2.</source>
        <translation>Dieses Stück ist %1 dick, gerechnet wird die Platte mit %2.</translation>
    </message>
</context>
<context>
    <name>pw::gui::PieceCut</name>
    <message>
        <source>No piece of the rack lies under the plan.</source>
        <translation>Unter dem Plan liegt kein Stück aus dem Regal.</translation>
    </message>
    <message>
        <source>The plate is not known yet, so it cannot be cut.</source>
        <translation>Die Platte ist noch nicht bekannt und lässt sich nicht schneiden.</translation>
    </message>
    <message>
        <source>Cut from “%1”; nothing usable is left of it.</source>
        <translation>Aus „%1“ geschnitten; Brauchbares bleibt davon nicht übrig.</translation>
    </message>
    <message numerus="yes">
        <source>%n of its kind are left whole.</source>
        <translation>
            <numerusform>%n dieser Art ist noch ganz.</numerusform>
            <numerusform>%n dieser Art sind noch ganz.</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>name of a piece</comment>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>Cut from “%1”. Its rest is on the rack as %2.</source>
        <translation>Aus „%1“ geschnitten. Der Rest liegt im Regal als %2.</translation>
    </message>
    <message>
        <source>Cut from “%1”. It fell into parts; they are on the rack as %2.</source>
        <translation>Aus „%1“ geschnitten. Der Rest ist in Teile zerfallen; sie liegen im Regal als %2.</translation>
    </message>
</context>
<context>
    <name>pw::gui::PieceEditor</name>
    <message>
        <source>Back to the rack</source>
        <translation>Zurück zum Regal</translation>
    </message>
    <message>
        <source>Type its points…</source>
        <translation>Punkte eingeben…</translation>
    </message>
    <message>
        <source>Four sides and a diagonal…</source>
        <translation>Vier Seiten und Diagonale…</translation>
    </message>
</context>
<context>
    <name>pw::gui::PieceFields</name>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What you call it: where it came from, or what is painted on it.</source>
        <translation>Wie es heißt: woher es kommt oder was darauf steht.</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Wo es liegt</translation>
    </message>
    <message>
        <source>So that it is found again.</source>
        <translation>Damit es wieder gefunden wird.</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Pieces that are alike.</source>
        <translation>Stücke, die gleich sind.</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Wem gehört es</translation>
    </message>
    <message>
        <source>A size to buy stands in the list after what you have.</source>
        <translation>Was zu kaufen wäre, steht in der Liste hinter dem, was da ist.</translation>
    </message>
    <message>
        <source>mine</source>
        <translation>da</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What else is to be known of it.</source>
        <translation>Was sonst davon zu wissen ist.</translation>
    </message>
    <message>
        <source>Thickness and steel</source>
        <translation>Dicke und Stahl</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Clear of the burnt edge, in three places. If they differ, type the thinnest and the thickest: 8.5-9.6 mm.</source>
        <translation>Abseits der Brennkante, an drei Stellen. Sind sie verschieden, die dünnste und die dickste eingeben: 8,5-9,6 mm.</translation>
    </message>
    <message>
        <source>Deepest pit</source>
        <translation>Tiefste Narbe</translation>
    </message>
    <message>
        <source>Scrape the rust out and feel with the depth gauge. It is taken off the thinnest place.</source>
        <translation>Rost auskratzen und mit dem Tiefenmaß messen. Wird von der dünnsten Stelle abgezogen.</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>The grade, if a stamp or a certificate says it. Otherwise leave it at unknown scrap.</source>
        <translation>Die Güte, wenn ein Stempel oder Zeugnis sie nennt. Sonst bei unbekanntem Schrott lassen.</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>A guess is judged as unknown scrap; the list says what it would be if the guess is right.</source>
        <translation>Vermutetes wird als unbekannter Schrott beurteilt; die Liste sagt, was es wäre, wenn die Vermutung stimmt.</translation>
    </message>
    <message>
        <source>it is marked</source>
        <translation>steht darauf</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>vermutet</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>A file on its edge</source>
        <translation>Feile an der Kante</translation>
    </message>
    <message>
        <source>Draw a file over a clean edge. It bites on steel that bends; it skates on steel that snaps.</source>
        <translation>Mit einer Feile über eine saubere Kante ziehen. Auf Stahl, der sich biegt, greift sie; auf Stahl, der bricht, rutscht sie.</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht versucht</translation>
    </message>
    <message>
        <source>bites</source>
        <translation>greift</translation>
    </message>
    <message>
        <source>skates</source>
        <translation>rutscht</translation>
    </message>
    <message>
        <source>A strip of it, bent</source>
        <translation>Ein Streifen, gebogen</translation>
    </message>
    <message>
        <source>Saw off a strip and bend it flat in the vice.</source>
        <translation>Einen Streifen absägen und im Schraubstock flach umbiegen.</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>gebogen</translation>
    </message>
    <message>
        <source>snapped</source>
        <translation>gebrochen</translation>
    </message>
    <message>
        <source>Cracks seen</source>
        <translation>Risse gesehen</translation>
    </message>
    <message>
        <source>Look at edges and old holes with a lamp and chalk.</source>
        <translation>Kanten und alte Löcher mit Lampe und Kreide absuchen.</translation>
    </message>
    <message>
        <source>not looked</source>
        <translation>nicht nachgesehen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Corner by corner, or traced</source>
        <translation>Ecken, oder abgezeichnet</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Over its middle, at the narrowest.</source>
        <translation>Über die Mitte, an der schmalsten Stelle.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>The longer side, at its shortest.</source>
        <translation>Die längere Seite, wo sie am kürzesten ist.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>The shorter side, at its narrowest.</source>
        <translation>Die kürzere Seite, wo sie am schmalsten ist.</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>square</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>Holes and bad areas</source>
        <translation>Löcher und schlechte Stellen</translation>
    </message>
    <message>
        <source>Holes in it</source>
        <translation>Löcher darin</translation>
    </message>
    <message>
        <source>Add a hole</source>
        <translation>Loch dazu</translation>
    </message>
    <message>
        <source>Bad areas: rust, old weld, a torch edge</source>
        <translation>Schlechte Stellen: Rost, alte Naht, Brennkante</translation>
    </message>
    <message>
        <source>Add a bad area</source>
        <translation>Schlechte Stelle dazu</translation>
    </message>
    <message>
        <source>Right of zero</source>
        <translation>Rechts von null</translation>
    </message>
    <message>
        <source>From the left end</source>
        <translation>Vom linken Ende</translation>
    </message>
    <message>
        <source>Right of the middle</source>
        <translation>Rechts der Mitte</translation>
    </message>
    <message>
        <source>Above zero</source>
        <translation>Über null</translation>
    </message>
    <message>
        <source>From the lower edge</source>
        <translation>Von der unteren Kante</translation>
    </message>
    <message>
        <source>Above the middle</source>
        <translation>Über der Mitte</translation>
    </message>
    <message>
        <source>To the centre, with the tape on the edge.</source>
        <translation>Bis zur Mitte, das Bandmaß an der Kante.</translation>
    </message>
    <message>
        <source>To the centre. Left of zero, or below it, is minus.</source>
        <translation>Bis zur Mitte. Links von null oder darunter ist minus.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a place, x and y</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove hole %1</source>
        <translation>Loch %1 entfernen</translation>
    </message>
    <message>
        <source>Hole %1, %2 × %3</source>
        <translation>Loch %1, %2 × %3</translation>
    </message>
    <message>
        <source>Hole %1, traced</source>
        <translation>Loch %1, abgezeichnet</translation>
    </message>
    <message>
        <source>Hole %1, slot %2 × %3 at %4</source>
        <translation>Loch %1, Langloch %2 × %3 bei %4</translation>
    </message>
    <message>
        <source>Hole %1, Ø%2 at %3</source>
        <translation>Loch %1, Ø%2 bei %3</translation>
    </message>
    <message>
        <source>Kind of hole</source>
        <translation>Art des Lochs</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rund</translation>
    </message>
    <message>
        <source>Slot</source>
        <translation>Langloch</translation>
    </message>
    <message>
        <source>Square or rectangular</source>
        <translation>Viereckig</translation>
    </message>
    <message>
        <source>At its widest.</source>
        <translation>An der weitesten Stelle.</translation>
    </message>
    <message>
        <source>Slot length</source>
        <translation>Langlochlänge</translation>
    </message>
    <message>
        <source>Slot width</source>
        <translation>Langlochbreite</translation>
    </message>
    <message>
        <source>Slot turned</source>
        <translation>Langloch gedreht</translation>
    </message>
    <message>
        <source>From three o&apos;clock, turning left.</source>
        <translation>Ab drei Uhr, linksherum.</translation>
    </message>
    <message>
        <source>Bad area %1</source>
        <translation>Schlechte Stelle %1</translation>
    </message>
    <message>
        <source>What is wrong there</source>
        <translation>Was dort ist</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>old weld</source>
        <translation>alte Naht</translation>
    </message>
    <message>
        <source>torch edge</source>
        <translation>Brennkante</translation>
    </message>
    <message>
        <source>%1, %2 × %3</source>
        <comment>a bad area, how wide, how high</comment>
        <translation>%1, %2 × %3</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n corners</source>
        <comment>a bad area</comment>
        <translation>
            <numerusform>%1, %n Ecke</numerusform>
            <numerusform>%1, %n Ecken</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Its width</source>
        <translation>Breite davon</translation>
    </message>
    <message>
        <source>Its height</source>
        <translation>Höhe davon</translation>
    </message>
    <message>
        <source>To where it begins.</source>
        <translation>Bis wo sie anfängt.</translation>
    </message>
    <message>
        <source>With what borders on it and is no better.</source>
        <translation>Mit dem, was daran grenzt und nicht besser ist.</translation>
    </message>
    <message>
        <source>Corners, in order round the edge</source>
        <translation>Ecken, der Reihe nach um den Rand</translation>
    </message>
    <message>
        <source>Corner %1 at %2</source>
        <translation>Ecke %1 bei %2</translation>
    </message>
    <message>
        <source>Add a corner after it</source>
        <translation>Ecke danach dazu</translation>
    </message>
    <message>
        <source>Add a corner after corner %1</source>
        <translation>Ecke nach Ecke %1 einfügen</translation>
    </message>
    <message>
        <source>Remove corner %1</source>
        <translation>Ecke %1 entfernen</translation>
    </message>
</context>
<context>
    <name>pw::gui::PieceFigures</name>
    <message>
        <source>Figures of the piece</source>
        <translation>Zahlen des Stücks</translation>
    </message>
</context>
<context>
    <name>pw::gui::PieceView</name>
    <message>
        <source>The piece, to scale</source>
        <translation>Das Stück, maßstäblich</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Ecke %1</translation>
    </message>
    <message>
        <source>Hole %1</source>
        <translation>Loch %1</translation>
    </message>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1 bei %2, %3</translation>
    </message>
    <message>
        <source>Move corner %1</source>
        <translation>Ecke %1 verschieben</translation>
    </message>
    <message>
        <source>Move hole %1</source>
        <translation>Loch %1 verschieben</translation>
    </message>
    <message>
        <source>The piece is drawn here when its size is known.</source>
        <translation>Hier wird das Stück gezeichnet, sobald seine Größe bekannt ist.</translation>
    </message>
</context>
<context>
    <name>pw::gui::PinWords</name>
    <message>
        <source>%1 to %2, over</source>
        <translation>%1 zu %2, außen</translation>
    </message>
    <message>
        <source>%1 to %2, between</source>
        <translation>%1 zu %2, innen</translation>
    </message>
    <message>
        <source>Pin circle %1, if the pins divide it evenly. Readings over all neighbours tell whether they do.</source>
        <translation>Lochkreis %1, wenn die Bolzen ihn gleichmäßig teilen. Ob sie das tun, sagen Ablesungen über alle Nachbarn.</translation>
    </message>
    <message>
        <source>Pin circle %1. Pin %2 is furthest from an even division: %3.</source>
        <translation>Lochkreis %1. Am weitesten von der gleichmäßigen Teilung liegt Bolzen %2: %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>pin, how far</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>From even, each pin: %1.</source>
        <translation>Abweichung von der gleichmäßigen Teilung, je Bolzen: %1.</translation>
    </message>
    <message>
        <source>The reading %1 fits if it was taken between the pins. It is left out.</source>
        <translation>Die Ablesung „%1“ passt, wenn innen zwischen den Bolzen gemessen wurde. Sie bleibt weg.</translation>
    </message>
    <message>
        <source>The reading %1 fits if it was taken over the pins. It is left out.</source>
        <translation>Die Ablesung „%1“ passt, wenn außen über die Bolzen gemessen wurde. Sie bleibt weg.</translation>
    </message>
    <message>
        <source>The reading %1 does not agree, by %2. The others ask for %3. It is left out.</source>
        <translation>Die Ablesung „%1“ passt um %2 nicht. Die anderen verlangen %3. Sie bleibt weg.</translation>
    </message>
    <message>
        <source>One reading is wrong: %1. Read one more pair to tell which.</source>
        <translation>Eine Ablesung ist falsch: %1. Welche, zeigt ein weiteres Paar.</translation>
    </message>
    <message>
        <source>The readings do not agree, and no single one is to blame. Are the pins numbered in order? Read them again.</source>
        <translation>Die Ablesungen passen nicht zusammen, und keine einzelne ist schuld. Sind die Bolzen der Reihe nach nummeriert? Noch einmal messen.</translation>
    </message>
    <message>
        <source>No reading is to spare, so a slip does not show. Read more pairs.</source>
        <translation>Keine Ablesung ist übrig, ein Versehen fällt also nicht auf. Mehr Paare messen.</translation>
    </message>
    <message>
        <source>The readings agree, to %1 each.</source>
        <translation>Die Ablesungen passen zusammen, jede auf %1.</translation>
    </message>
    <message>
        <source>The pins are taken to lie on one circle. Every second pair read as well gives each its own place.</source>
        <translation>Angenommen ist, dass die Bolzen auf einem Kreis liegen. Jedes zweite Paar dazu gemessen gibt jedem seinen eigenen Platz.</translation>
    </message>
    <message>
        <source>One pin is %1 across, worked out from both kinds of readings.</source>
        <translation>Ein Bolzen ist %1 dick, aus beiden Arten von Ablesungen berechnet.</translation>
    </message>
    <message>
        <source>That is no more than the cutting may be off: one even circle serves.</source>
        <translation>Das ist nicht mehr, als das Schneiden danebenliegen darf: ein gleichmäßiger Kreis genügt.</translation>
    </message>
    <message>
        <source>That is more than the cutting may be off: give each pin its own place.</source>
        <translation>Das ist mehr, als das Schneiden danebenliegen darf: jedem Bolzen seinen eigenen Platz geben.</translation>
    </message>
    <message>
        <source>This may be the one that does not agree.</source>
        <translation>Vielleicht ist es diese, die nicht passt.</translation>
    </message>
    <message>
        <source>Does not agree, by %1. The others ask for %2.</source>
        <translation>Passt um %1 nicht. Die anderen verlangen %2.</translation>
    </message>
</context>
<context>
    <name>pw::gui::PlanActions</name>
    <message>
        <source>Plate across</source>
        <translation>Plattendurchmesser</translation>
    </message>
    <message>
        <source>Plate length</source>
        <translation>Plattenlänge</translation>
    </message>
    <message>
        <source>Plate width</source>
        <translation>Plattenbreite</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>Pin circle</source>
        <translation>Lochkreis</translation>
    </message>
    <message>
        <source>Access holes</source>
        <translation>Montagelöcher</translation>
    </message>
    <message>
        <source>First station&apos;s angle</source>
        <translation>Winkel der ersten Station</translation>
    </message>
    <message>
        <source>Hole %1</source>
        <translation>Loch %1</translation>
    </message>
    <message>
        <source>Hole %1 across</source>
        <translation>Loch %1, Durchmesser</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Ecke %1</translation>
    </message>
    <message>
        <source>Station %1</source>
        <translation>Station %1</translation>
    </message>
    <message>
        <source>In the way %1</source>
        <translation>Hindernis %1</translation>
    </message>
    <message>
        <source>In the way %1, room</source>
        <translation>Hindernis %1, Platzbedarf</translation>
    </message>
    <message>
        <source>Remove hole %1</source>
        <translation>Loch %1 entfernen</translation>
    </message>
    <message>
        <source>Remove what stands in the way, %1</source>
        <translation>Hindernis %1 entfernen</translation>
    </message>
    <message>
        <source>Remove corner %1</source>
        <translation>Ecke %1 entfernen</translation>
    </message>
    <message>
        <source>Remove station %1</source>
        <translation>Station %1 entfernen</translation>
    </message>
    <message>
        <source>Add a corner here</source>
        <translation>Hier eine Ecke dazu</translation>
    </message>
    <message>
        <source>Add a hole here</source>
        <translation>Hier ein Loch dazu</translation>
    </message>
    <message>
        <source>Add a station here</source>
        <translation>Hier eine Station dazu</translation>
    </message>
    <message>
        <source>Something stands in the way here</source>
        <translation>Hier steht etwas im Weg</translation>
    </message>
    <message>
        <source>Piece of steel</source>
        <translation>Stahlstück</translation>
    </message>
    <message>
        <source>Piece of steel, turned</source>
        <translation>Stahlstück, gedreht</translation>
    </message>
    <message>
        <source>Take the piece of steel away</source>
        <translation>Stahlstück wegnehmen</translation>
    </message>
</context>
<context>
    <name>pw::gui::PlanView</name>
    <message>
        <source>Stress, ksi</source>
        <translation>Spannung, ksi</translation>
    </message>
    <message>
        <source>Stress, MPa</source>
        <translation>Spannung, MPa</translation>
    </message>
    <message>
        <source>yields %1</source>
        <translation>fließt bei %1</translation>
    </message>
    <message>
        <source>Deflection, in</source>
        <translation>Durchbiegung, in</translation>
    </message>
    <message>
        <source>Deflection, mm</source>
        <translation>Durchbiegung, mm</translation>
    </message>
    <message>
        <source>Worst: %1</source>
        <translation>Schlimmste Stelle: %1</translation>
    </message>
    <message>
        <source>Steps of %1</source>
        <translation>Schritte von %1</translation>
    </message>
    <message>
        <source>Full load, %1</source>
        <translation>Volle Last, %1</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation>%1 lang</translation>
    </message>
    <message>
        <source>%1 wide</source>
        <translation>%1 breit</translation>
    </message>
    <message>
        <source>first at %1°</source>
        <translation>erste bei %1°</translation>
    </message>
    <message>
        <source>Not worked out yet. The verdict says what is needed first.</source>
        <translation>Noch nicht ausgerechnet. Das Ergebnis sagt, was zuerst gebraucht wird.</translation>
    </message>
    <message>
        <source>Plan of the plate</source>
        <translation>Draufsicht der Platte</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Schlicht</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Deflection</source>
        <translation>Durchbiegung</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Bent</source>
        <translation>Gebogen</translation>
    </message>
    <message>
        <source>What the plan shows</source>
        <translation>Was die Draufsicht zeigt</translation>
    </message>
    <message>
        <source>%1: arrow keys change it</source>
        <translation>%1: die Pfeiltasten ändern es</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>on to it and off it</source>
        <translation>Anschnitt und Auslauf</translation>
    </message>
    <message>
        <source>torch off</source>
        <translation>Brenner aus</translation>
    </message>
    <message>
        <source>%1: arrow keys move it</source>
        <translation>%1: die Pfeiltasten verschieben es</translation>
    </message>
    <message>
        <source>%1 right, %2 up</source>
        <comment>a place on the plan</comment>
        <translation>%1 nach rechts, %2 nach oben</translation>
    </message>
    <message>
        <source>Tab goes from part to part, the arrow keys change or move it by one step, Delete takes it out, the menu key adds. F shows it all.</source>
        <translation>Tab geht von Teil zu Teil, die Pfeiltasten ändern oder verschieben es um einen Schritt, Entf nimmt es heraus, die Menütaste fügt hinzu. F zeigt alles.</translation>
    </message>
    <message>
        <source>Cut path</source>
        <translation>Schnittbahn</translation>
    </message>
    <message>
        <source>Middle at %1, %2 on the piece</source>
        <translation>Mitte bei %1, %2 auf dem Stück</translation>
    </message>
    <message>
        <source>Turned %1° on the piece</source>
        <translation>Auf dem Stück um %1° gedreht</translation>
    </message>
</context>
<context>
    <name>pw::gui::Preferences</name>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Desktop</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Gliding</source>
        <translation>Gleitend</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>A drag snaps to</source>
        <translation>Ziehen rastet bei</translation>
    </message>
    <message>
        <source>1/32 in</source>
        <translation>1/32 in</translation>
    </message>
    <message>
        <source>1/16 in</source>
        <translation>1/16 in</translation>
    </message>
    <message>
        <source>1/8 in</source>
        <translation>1/8 in</translation>
    </message>
    <message>
        <source>1/4 in</source>
        <translation>1/4 in</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>pw::gui::ProposalModel</name>
    <message>
        <source>How the sizes were found</source>
        <translation>Wie die Maße gefunden wurden</translation>
    </message>
    <message>
        <source>How the sizes were found: %1</source>
        <translation>Wie die Maße gefunden wurden: %1</translation>
    </message>
</context>
<context>
    <name>pw::gui::ProposalRows</name>
    <message>
        <source>%1 plate</source>
        <comment>thickness as it is stocked</comment>
        <translation>Blech von %1</translation>
    </message>
    <message>
        <source>bends %1</source>
        <translation>biegt sich um %1 durch</translation>
    </message>
    <message>
        <source>%1 what is wanted</source>
        <translation>%1 des Verlangten</translation>
    </message>
</context>
<context>
    <name>pw::gui::ProposeDialog</name>
    <message>
        <source>Take this one</source>
        <translation>Diese nehmen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Propose a plate</source>
        <translation>Platte vorschlagen</translation>
    </message>
    <message>
        <source>Plates for these stations, this load and this screw, each checked whole. What you take can be edited, and undone.</source>
        <translation>Platten für diese Stationen, diese Last und diese Spindel, jede ganz geprüft. Was genommen wird, lässt sich ändern und zurücknehmen.</translation>
    </message>
    <message>
        <source>Proposed plates, best first</source>
        <translation>Vorgeschlagene Platten, die beste zuerst</translation>
    </message>
    <message>
        <source>It could not be worked out: %1</source>
        <translation>Es ließ sich nicht ausrechnen: %1</translation>
    </message>
    <message>
        <source>Looking for plates</source>
        <translation>Platten werden gesucht</translation>
    </message>
    <message>
        <source>Stopped before it was done.</source>
        <translation>Angehalten, bevor es fertig war.</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal suchen</translation>
    </message>
    <message>
        <source>There is nothing to propose yet.</source>
        <translation>Noch lässt sich nichts vorschlagen.</translation>
    </message>
    <message>
        <source>Nothing can be proposed. %1</source>
        <translation>Es lässt sich nichts vorschlagen. %1</translation>
    </message>
    <message>
        <source>No plate of stock thickness can be checked with these figures.</source>
        <translation>Mit diesen Werten lässt sich keine Platte handelsüblicher Dicke prüfen.</translation>
    </message>
    <message>
        <source>Go to the figure</source>
        <translation>Zur Angabe gehen</translation>
    </message>
    <message>
        <source>Take a proposed plate</source>
        <translation>Vorgeschlagene Platte genommen</translation>
    </message>
    <message>
        <source>None of these may be made as it stands; each says why.</source>
        <translation>Keine davon darf so gebaut werden; bei jeder steht, warum.</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackDelegate</name>
    <message>
        <source>%1, under the plan</source>
        <comment>a piece of the rack</comment>
        <translation>%1, unter dem Plan</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>what a piece is; where it lies</comment>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackDesk</name>
    <message>
        <source>%1 was changed by another program; what it holds now stands here. Undo goes back.</source>
        <translation>%1 wurde von einem anderen Programm geändert; hier steht, was jetzt darin ist. Rückgängig geht zurück.</translation>
    </message>
    <message>
        <source>Not ranked. %1</source>
        <translation>Nicht geordnet. %1</translation>
    </message>
    <message>
        <source>Not ranked: %1</source>
        <translation>Nicht geordnet: %1</translation>
    </message>
    <message>
        <source>Stopped. The pieces stand as far as they are ranked.</source>
        <translation>Angehalten. Die Stücke stehen so, wie sie bis jetzt geordnet sind.</translation>
    </message>
    <message>
        <source>Name of the piece</source>
        <translation>Name des Stücks</translation>
    </message>
    <message>
        <source>Lay it on %1</source>
        <translation>Auf %1 legen</translation>
    </message>
    <message>
        <source>Cut from %1</source>
        <translation>Aus %1 geschnitten</translation>
    </message>
    <message>
        <source>Offcut</source>
        <translation>Reststück</translation>
    </message>
    <message>
        <source>Add an offcut</source>
        <translation>Reststück dazu</translation>
    </message>
    <message>
        <source>Points of the outline</source>
        <translation>Punkte des Umrisses</translation>
    </message>
    <message>
        <source>Type or paste the points in order round the edge, x and y, with a semicolon after each.</source>
        <translation>Die Punkte der Reihe nach um den Rand eingeben oder einfügen, x und y, nach jedem ein Semikolon.</translation>
    </message>
    <message>
        <source>Four sides and a diagonal</source>
        <translation>Vier Seiten und eine Diagonale</translation>
    </message>
    <message>
        <source>Type the four sides in order round the piece, then the diagonal from the first corner to the third.</source>
        <translation>Die vier Seiten der Reihe nach eingeben, dann die Diagonale von der ersten zur dritten Ecke.</translation>
    </message>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stück</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>the rack&apos;s file, how many pieces</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, not in the file</source>
        <translation>%1, nicht in der Datei</translation>
    </message>
    <message>
        <source>Open another rack file…</source>
        <translation>Andere Regaldatei öffnen…</translation>
    </message>
    <message>
        <source>No pieces yet. Add the first offcut.</source>
        <translation>Noch keine Stücke. Das erste Reststück eingeben.</translation>
    </message>
    <message>
        <source>Add the first offcut</source>
        <translation>Das erste Reststück eingeben</translation>
    </message>
    <message>
        <source>No pieces yet. Add the first offcut, and a rack begins beside the job.</source>
        <translation>Noch keine Stücke. Mit dem ersten Reststück beginnt ein Regal neben dem Auftrag.</translation>
    </message>
    <message>
        <source>Begin it with the first offcut</source>
        <translation>Mit dem ersten Reststück anfangen</translation>
    </message>
    <message>
        <source>Take the copy %1</source>
        <translation>Die Kopie %1 nehmen</translation>
    </message>
    <message>
        <source>Where the rack is kept</source>
        <translation>Wo das Regal liegen soll</translation>
    </message>
    <message>
        <source>Racks (*.json)</source>
        <translation>Regale (*.json)</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Meines behalten</translation>
    </message>
    <message>
        <source>Take theirs</source>
        <translation>Das andere nehmen</translation>
    </message>
    <message>
        <source>Write it again</source>
        <translation>Wieder schreiben</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Close, and lose these changes?</source>
        <translation>Schließen und diese Änderungen verlieren?</translation>
    </message>
    <message>
        <source>Close all the same</source>
        <translation>Trotzdem schließen</translation>
    </message>
    <message>
        <source>Take the rack used last, %1</source>
        <translation>Das zuletzt benutzte Regal nehmen, %1</translation>
    </message>
    <message>
        <source>Ranking the pieces</source>
        <translation>Stücke werden geordnet</translation>
    </message>
    <message>
        <source>Rank them</source>
        <translation>Ordnen</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackDocument</name>
    <message>
        <source>There is such a file already.</source>
        <translation>So eine Datei gibt es schon.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a second piece of a name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Copy %1</source>
        <translation>%1 kopieren</translation>
    </message>
    <message>
        <source>Take %1 off the rack</source>
        <translation>%1 aus dem Regal nehmen</translation>
    </message>
    <message>
        <source>a piece</source>
        <translation>ein Stück</translation>
    </message>
    <message>
        <source>%1 is gone. What stands here is not in any file.</source>
        <translation>%1 ist fort. Was hier steht, ist in keiner Datei.</translation>
    </message>
    <message>
        <source>%1 was written by another program meanwhile. Your changes stand here and are not in the file.</source>
        <translation>%1 hat inzwischen ein anderes Programm geschrieben. Ihre Änderungen stehen hier und nicht in der Datei.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Your changes stand here.</source>
        <translation>%1 ließ sich nicht schreiben: %2. Ihre Änderungen stehen hier.</translation>
    </message>
    <message>
        <source>%1 holds no rack any more: %2. What was read before stands here.</source>
        <translation>In %1 steht kein Regal mehr: %2. Hier steht, was vorher gelesen wurde.</translation>
    </message>
    <message>
        <source>What another program wrote</source>
        <translation>Was ein anderes Programm schrieb</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackList</name>
    <message>
        <source>Lay it under the plan</source>
        <translation>Unter den Plan legen</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Take off the rack</source>
        <translation>Aus dem Regal</translation>
    </message>
    <message>
        <source>Cut it, leave the rest</source>
        <translation>Schneiden, Rest behalten</translation>
    </message>
    <message>
        <source>Pieces, best first</source>
        <translation>Stücke, das beste zuerst</translation>
    </message>
    <message>
        <source>The plate is cut: the rack has one piece fewer of its kind, and its rest</source>
        <translation>Die Platte ist geschnitten: im Regal liegt ein Stück dieser Art weniger, und sein Rest</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackPage</name>
    <message>
        <source>Add an offcut</source>
        <translation>Reststück dazu</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
    <message>
        <source>Least waste</source>
        <translation>Wenig Abfall</translation>
    </message>
    <message>
        <source>Lightest</source>
        <translation>Leicht</translation>
    </message>
    <message>
        <source>Most margin</source>
        <translation>Sicher</translation>
    </message>
    <message>
        <source>Quickest cut</source>
        <translation>Schnell</translation>
    </message>
    <message>
        <source>What counts where the verdict is the same</source>
        <translation>Was zählt, wenn das Ergebnis gleich ist</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>First of equals:</source>
        <translation>Bei Gleichstand:</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackRows</name>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stück</numerusform>
        </translation>
    </message>
    <message>
        <source>counted as %1</source>
        <translation>gezählt als %1</translation>
    </message>
    <message>
        <source>%1 by guess</source>
        <translation>%1 vermutet</translation>
    </message>
    <message>
        <source>steel unknown</source>
        <translation>Stahl unbekannt</translation>
    </message>
    <message>
        <source>waste %1</source>
        <translation>Abfall %1</translation>
    </message>
    <message>
        <source>leaves nothing usable</source>
        <translation>nichts Brauchbares übrig</translation>
    </message>
    <message>
        <source>%1 min to cut</source>
        <translation>%1 min Schnitt</translation>
    </message>
    <message>
        <source>No room for the plate</source>
        <translation>Kein Platz für die Platte</translation>
    </message>
    <message>
        <source>There is room, and the verdict is not known</source>
        <translation>Platz ist da, das Ergebnis ist nicht bekannt</translation>
    </message>
    <message>
        <source>There is room, and it would not hold</source>
        <translation>Platz ist da, und es würde nicht halten</translation>
    </message>
    <message>
        <source>On the rack, and it will do</source>
        <translation>Im Regal, und es reicht</translation>
    </message>
    <message>
        <source>To buy, and it will do</source>
        <translation>Zu kaufen, und es reicht</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>to buy, %1</source>
        <translation>zu kaufen, %1</translation>
    </message>
    <message>
        <source>Not ranked yet</source>
        <translation>Noch nicht geordnet</translation>
    </message>
    <message>
        <source>On the rack</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>Left out until a figure is mended</source>
        <translation>Ausgelassen, bis eine Zahl berichtigt ist</translation>
    </message>
    <message>
        <source>None left</source>
        <translation>Keines mehr da</translation>
    </message>
    <message>
        <source>Its count is nought.</source>
        <translation>Die Anzahl ist null.</translation>
    </message>
    <message>
        <source>Thickness: %1</source>
        <translation>Dicke: %1</translation>
    </message>
    <message>
        <source>Pits: %1</source>
        <translation>Narben: %1</translation>
    </message>
    <message>
        <source>Steel: %1</source>
        <translation>Stahl: %1</translation>
    </message>
    <message>
        <source>Count: %1</source>
        <translation>Anzahl: %1</translation>
    </message>
    <message>
        <source>Outline: %1</source>
        <translation>Umriss: %1</translation>
    </message>
    <message>
        <source>Holes: %1</source>
        <translation>Löcher: %1</translation>
    </message>
    <message>
        <source>Bad areas: %1</source>
        <translation>Schlechte Stellen: %1</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>%1 what is wanted</source>
        <translation>%1 des Verlangten</translation>
    </message>
    <message>
        <source>leaves as much as a piece of %1</source>
        <translation>lässt so viel übrig wie ein Stück von %1</translation>
    </message>
</context>
<context>
    <name>pw::gui::RackShelf</name>
    <message>
        <source>The rack %1 lies beside the job. Save the job first.</source>
        <translation>Das Regal %1 liegt beim Auftrag. Speichern Sie zuerst den Auftrag.</translation>
    </message>
    <message>
        <source>The rack %1 is not there. The job goes on without it.</source>
        <translation>Das Regal %1 ist nicht da. Der Auftrag geht ohne es weiter.</translation>
    </message>
    <message>
        <source>The rack %1 cannot be read: %2</source>
        <translation>Das Regal %1 lässt sich nicht lesen: %2</translation>
    </message>
    <message>
        <source>The rack has no piece called “%1”.</source>
        <translation>Im Regal gibt es kein Stück namens „%1“.</translation>
    </message>
    <message>
        <source>No rack is named, so the piece cannot be drawn. Name the rack&apos;s file first.</source>
        <translation>Kein Regal ist genannt, deshalb lässt sich das Stück nicht zeichnen. Nennen Sie zuerst die Regaldatei.</translation>
    </message>
    <message>
        <source>Rack file</source>
        <translation>Regaldatei</translation>
    </message>
</context>
<context>
    <name>pw::gui::SectionView</name>
    <message>
        <source>solid before that</source>
        <translation>vorher auf Block</translation>
    </message>
    <message>
        <source>tight, %1 to solid</source>
        <translation>knapp, %1 bis Block</translation>
    </message>
    <message>
        <source>%1 short of solid</source>
        <translation>%1 vor Block</translation>
    </message>
    <message>
        <source>thread ends %1 too soon</source>
        <translation>Gewinde endet %1 zu früh</translation>
    </message>
    <message>
        <source>%1 of thread left</source>
        <translation>%1 Gewinde übrig</translation>
    </message>
    <message>
        <source>seated</source>
        <translation>sitzt</translation>
    </message>
    <message>
        <source>assembled</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>squeezed</source>
        <translation>gedrückt</translation>
    </message>
    <message>
        <source>off</source>
        <translation>herunter</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>%1 back</source>
        <translation>%1 zurück</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Travel of the plate</source>
        <translation>Weg der Platte</translation>
    </message>
    <message>
        <source>solid, %1 too far</source>
        <translation>auf Block, %1 zu weit</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>auf Block</translation>
    </message>
    <message>
        <source>tight: %1 to solid</source>
        <translation>knapp: %1 bis Block</translation>
    </message>
    <message>
        <source>1 turn</source>
        <translation>1 Umdrehung</translation>
    </message>
    <message>
        <source>%1 turns</source>
        <translation>%1 Umdrehungen</translation>
    </message>
    <message>
        <source>How far it must come off is not given.</source>
        <translation>Wie weit es herunter muss, ist nicht angegeben.</translation>
    </message>
    <message>
        <source>Travel is not known. Needed: %1.</source>
        <translation>Der Weg ist nicht bekannt. Gebraucht wird: %1.</translation>
    </message>
    <message>
        <source>How far the springs open is not known.</source>
        <translation>Wie weit sich die Federn öffnen, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The springs are free.</source>
        <translation>Die Federn sind frei.</translation>
    </message>
    <message>
        <source>The springs push %1.</source>
        <translation>Die Federn drücken mit %1.</translation>
    </message>
    <message>
        <source>Backed off %1.</source>
        <translation>%1 zurückgedreht.</translation>
    </message>
    <message>
        <source>Turned in %1.</source>
        <translation>%1 hineingedreht.</translation>
    </message>
    <message>
        <source>Springs %1</source>
        <translation>Federn %1</translation>
    </message>
    <message>
        <source>springs %1</source>
        <translation>Federn %1</translation>
    </message>
    <message>
        <source>push %1</source>
        <translation>Druck %1</translation>
    </message>
    <message>
        <source>dashes: size not given</source>
        <translation>Strichlinie: Größe nicht angegeben</translation>
    </message>
    <message>
        <source>spring %1</source>
        <translation>Feder %1</translation>
    </message>
    <message>
        <source>thread %1</source>
        <translation>Gewinde %1</translation>
    </message>
</context>
<context>
    <name>pw::gui::Sentences</name>
    <message>
        <source>Something is pulled off</source>
        <translation>Etwas wird abgezogen</translation>
    </message>
    <message>
        <source>Springs in a ring</source>
        <translation>Federn im Kreis</translation>
    </message>
    <message>
        <source>Springs</source>
        <translation>Federn</translation>
    </message>
    <message>
        <source>%1, %2 further</source>
        <translation>%1, %2 weiter</translation>
    </message>
    <message>
        <source>%1, each placed by itself</source>
        <translation>%1, jede einzeln gesetzt</translation>
    </message>
    <message>
        <source>%1 on Ø%2</source>
        <translation>%1 auf Ø%2</translation>
    </message>
    <message>
        <source>How many, and on which circle?</source>
        <translation>Wie viele, und auf welchem Kreis?</translation>
    </message>
    <message>
        <source>bolt holes %1</source>
        <translation>Schraubenlöcher %1</translation>
    </message>
    <message>
        <source>access holes %1</source>
        <translation>Montagelöcher %1</translation>
    </message>
    <message>
        <source>Nobody knows how tight</source>
        <translation>Wie fest, weiß niemand</translation>
    </message>
    <message>
        <source>A straight shaft, pressed</source>
        <translation>Gerade Welle, aufgepresst</translation>
    </message>
    <message>
        <source>Ø%1</source>
        <translation>Ø%1</translation>
    </message>
    <message>
        <source>asks for %1</source>
        <translation>verlangt %1</translation>
    </message>
    <message>
        <source>%1 bolts %2</source>
        <translation>%1 Schrauben %2</translation>
    </message>
    <message>
        <source>%1 jaws</source>
        <translation>%1 Klauen</translation>
    </message>
    <message>
        <source>%1 legs %2</source>
        <translation>%1 Zugstangen %2</translation>
    </message>
    <message>
        <source>Bolts, jaws or legs?</source>
        <translation>Schrauben, Klauen oder Zugstangen?</translation>
    </message>
    <message>
        <source>No ram</source>
        <translation>Kein Zylinder</translation>
    </message>
    <message>
        <source>rod %1</source>
        <translation>Stange %1</translation>
    </message>
    <message>
        <source>Ram, not all given yet</source>
        <translation>Zylinder, noch nicht alles angegeben</translation>
    </message>
    <message>
        <source>part %1</source>
        <translation>Teil %1</translation>
    </message>
    <message>
        <source>tool %1</source>
        <translation>Werkzeug %1</translation>
    </message>
    <message>
        <source>All cold</source>
        <translation>Alles kalt</translation>
    </message>
    <message>
        <source>Wrench, ram or fit decide</source>
        <translation>Schlüssel, Zylinder oder Sitz entscheiden</translation>
    </message>
    <message>
        <source>%1, what the fit may ask</source>
        <translation>%1, was der Sitz verlangen kann</translation>
    </message>
    <message>
        <source>%1, what the wrench can make</source>
        <translation>%1, was der Schlüssel schaffen kann</translation>
    </message>
    <message>
        <source>%1, what the ram can make</source>
        <translation>%1, was der Zylinder schaffen kann</translation>
    </message>
    <message>
        <source>Nobody states it: %1 is what the tool may do</source>
        <translation>Niemand gibt sie an: %1 darf das Werkzeug</translation>
    </message>
    <message>
        <source>%1, given</source>
        <translation>%1, angegeben</translation>
    </message>
    <message>
        <source>%1, from the springs</source>
        <translation>%1, aus den Federn</translation>
    </message>
    <message>
        <source>No springs and no load yet</source>
        <translation>Noch keine Federn und keine Last</translation>
    </message>
    <message>
        <source>Springs, not all measured yet</source>
        <translation>Federn, noch nicht alle gemessen</translation>
    </message>
    <message>
        <source>Thickness needed</source>
        <translation>Dicke gebraucht</translation>
    </message>
    <message>
        <source>unknown scrap</source>
        <translation>unbekannter Schrott</translation>
    </message>
    <message>
        <source>disc Ø%1</source>
        <translation>Scheibe Ø%1</translation>
    </message>
    <message>
        <source>disc</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>bar %1 × %2</source>
        <translation>Flachstück %1 × %2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>No screw yet</source>
        <translation>Noch keine Spindel</translation>
    </message>
    <message>
        <source>washer %1</source>
        <translation>Unterlegscheibe %1</translation>
    </message>
    <message>
        <source>bore %1</source>
        <translation>Bohrung %1</translation>
    </message>
    <message>
        <source>The shaft itself</source>
        <translation>Die Welle selbst</translation>
    </message>
    <message>
        <source>%1 %2 × %3, %4 apart</source>
        <translation>%1 %2 × %3, Stützweite %4</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Flachstück</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Klotz</translation>
    </message>
    <message>
        <source>Stop bolt %1</source>
        <translation>Anschlagschraube %1</translation>
    </message>
    <message>
        <source>Not said how</source>
        <translation>Nicht angegeben, wie</translation>
    </message>
    <message>
        <source>%1, holes ±&#xa0;%2</source>
        <translation>%1, Löcher ± %2</translation>
    </message>
    <message>
        <source>%1, stamped %2</source>
        <translation>%1, eingeprägt %2</translation>
    </message>
    <message>
        <source>%1, and %2 of set</source>
        <translation>%1, und es bleiben %2</translation>
    </message>
    <message>
        <source>%1, and no set to see</source>
        <translation>%1, und nichts Sichtbares bleibt</translation>
    </message>
    <message>
        <source>%1 of them carry</source>
        <translation>%1 davon tragen</translation>
    </message>
    <message>
        <source>No other holes, nothing in the way</source>
        <translation>Keine weiteren Löcher, nichts im Weg</translation>
    </message>
    <message>
        <source>Other holes: %1</source>
        <translation>Weitere Löcher: %1</translation>
    </message>
    <message>
        <source>In the way: %1</source>
        <translation>Im Weg: %1</translation>
    </message>
    <message>
        <source>Other holes: %1, in the way: %2</source>
        <translation>Weitere Löcher: %1, im Weg: %2</translation>
    </message>
    <message>
        <source>polygon, %1 corners</source>
        <translation>Vieleck, %1 Ecken</translation>
    </message>
    <message>
        <source>No piece chosen</source>
        <translation>Kein Stück gewählt</translation>
    </message>
    <message>
        <source>No piece chosen from %1</source>
        <translation>Kein Stück aus %1 gewählt</translation>
    </message>
    <message>
        <source>%1, middle at %2, %3</source>
        <translation>%1, Mitte bei %2, %3</translation>
    </message>
    <message>
        <source>%1, middle at %2, %3, turned %4°</source>
        <translation>%1, Mitte bei %2, %3, um %4° gedreht</translation>
    </message>
</context>
<context>
    <name>pw::gui::SpringWords</name>
    <message>
        <source>It rises by about %1, a guess. A second reading at another length settles it.</source>
        <translation>Federrate etwa %1, geschätzt. Eine zweite Ablesung bei anderer Länge klärt es.</translation>
    </message>
    <message>
        <source>It rises by %1.</source>
        <translation>Federrate %1.</translation>
    </message>
    <message>
        <source>Built in, at %1, it pushes with %2.</source>
        <translation>Eingebaut, bei %1, drückt sie mit %2.</translation>
    </message>
    <message>
        <source>Squeezed %1 further it pushes with %2.</source>
        <translation>Um %1 weiter zusammengedrückt, drückt sie mit %2.</translation>
    </message>
    <message>
        <source>Readings %1 and %2 are at one length and differ. Check both.</source>
        <translation>Die Ablesungen %1 und %2 gelten für dieselbe Länge und sind verschieden. Beide prüfen.</translation>
    </message>
    <message>
        <source>Readings %1 and %2 cannot both be right: shorter, it must push harder. Are the lengths changed round?</source>
        <translation>Die Ablesungen %1 und %2 können nicht beide stimmen: kürzer muss die Feder stärker drücken. Sind die Längen vertauscht?</translation>
    </message>
</context>
<context>
    <name>pw::gui::StripPane</name>
    <message>
        <source>plate</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>retainer</source>
        <translation>Federteller</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>keeper</source>
        <translation>Keil</translation>
    </message>
    <message>
        <source>hub</source>
        <translation>Nabe</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>backing bar</source>
        <translation>Gegenhalter</translation>
    </message>
    <message>
        <source>screw</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <source>screw head</source>
        <translation>Spindelkopf</translation>
    </message>
    <message>
        <source>nut</source>
        <translation>Mutter</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>Unterlegscheibe</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>Zugstange</translation>
    </message>
    <message>
        <source>jaw</source>
        <translation>Klaue</translation>
    </message>
</context>
<context>
    <name>pw::gui::ToolDialog</name>
    <message>
        <source>Try a tool you have</source>
        <translation>Vorhandenes Werkzeug versuchen</translation>
    </message>
    <message>
        <source>The tool&apos;s own figures. The job that is open stays as it is.</source>
        <translation>Die Angaben des Werkzeugs selbst. Der geöffnete Auftrag bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>Take the tool from its own job…</source>
        <translation>Werkzeug aus seinem eigenen Auftrag nehmen…</translation>
    </message>
    <message>
        <source>It could not be worked out: %1</source>
        <translation>Es ließ sich nicht ausrechnen: %1</translation>
    </message>
    <message>
        <source>Working it out.</source>
        <translation>Wird gerechnet.</translation>
    </message>
    <message>
        <source>It does not go on this part.</source>
        <translation>Es passt nicht auf dieses Teil.</translation>
    </message>
</context>
<context>
    <name>pw::gui::TopBar</name>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Cut file</source>
        <translation>Schneiddatei</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Writes a DXF for the cutting table</source>
        <translation>Schreibt eine DXF für den Schneidtisch</translation>
    </message>
    <message>
        <source>Writes a STEP solid</source>
        <translation>Schreibt ein STEP-Volumenmodell</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Zurück zum Plan</translation>
    </message>
    <message>
        <source>The pieces you have, best first for this job</source>
        <translation>Die Stücke, die da sind, das beste für diesen Auftrag zuerst</translation>
    </message>
</context>
<context>
    <name>pw::gui::VerdictHead</name>
    <message>
        <source>holds</source>
        <translation>hält</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>verbiegt sich</translation>
    </message>
    <message>
        <source>breaks</source>
        <translation>bricht</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>Verdict: %1. %2</source>
        <translation>Ergebnis: %1. %2</translation>
    </message>
    <message>
        <source>Working it out</source>
        <translation>Wird gerechnet</translation>
    </message>
    <message>
        <source>%1, %2&#xa0;%</source>
        <translation>%1, %2 %</translation>
    </message>
</context>
<context>
    <name>pw::gui::VerdictPanel</name>
    <message>
        <source>on the ram&apos;s gauge</source>
        <translation>am Manometer des Zylinders</translation>
    </message>
    <message>
        <source>Full squeeze takes %1.</source>
        <translation>Volles Drücken braucht %1.</translation>
    </message>
    <message>
        <source>Full load takes %1.</source>
        <translation>Volle Last braucht %1.</translation>
    </message>
    <message>
        <source>Not enough: full squeeze takes %1.</source>
        <translation>Reicht nicht: volles Drücken braucht %1.</translation>
    </message>
    <message>
        <source>Not enough: full load takes %1.</source>
        <translation>Reicht nicht: volle Last braucht %1.</translation>
    </message>
    <message>
        <source>Full squeeze takes %1 on the wrench.</source>
        <translation>Volles Drücken braucht %1 am Schlüssel.</translation>
    </message>
    <message>
        <source>Full load takes %1 on the wrench.</source>
        <translation>Volle Last braucht %1 am Schlüssel.</translation>
    </message>
    <message>
        <source>Full load is %1.</source>
        <translation>Volle Last ist %1.</translation>
    </message>
    <message>
        <source>Stop at %1. Rated load %2. %3</source>
        <translation>Schluss bei %1. Nennlast %2. %3</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>nicht ausgerechnet</translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation>Schluss bei</translation>
    </message>
    <message>
        <source>Rated load</source>
        <translation>Nennlast</translation>
    </message>
    <message>
        <source>Cautions: %1 %2 %3</source>
        <translation>Vorsicht: %1 %2 %3</translation>
    </message>
    <message>
        <source>Fewer cautions</source>
        <translation>Weniger Hinweise</translation>
    </message>
    <message>
        <source>All cautions</source>
        <translation>Alle Hinweise</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>Checks, weakest first</source>
        <translation>Schwächste zuerst</translation>
    </message>
    <message>
        <source>Working it out.</source>
        <translation>Wird gerechnet.</translation>
    </message>
    <message>
        <source>The check stopped on a fault of the program: %1. Undo the last change; the job is safe.</source>
        <translation>Die Prüfung ist an einem Programmfehler gescheitert: %1. Die letzte Änderung rückgängig machen; der Auftrag ist sicher.</translation>
    </message>
    <message>
        <source>Go to the figure</source>
        <translation>Zur Angabe gehen</translation>
    </message>
    <message>
        <source>%1 are still needed.</source>
        <translation>Es fehlen noch %1.</translation>
    </message>
    <message>
        <source>It is the only one left.</source>
        <translation>Es ist die einzige, die noch fehlt.</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>%1 more, all hold</source>
        <translation>Noch %1, alle halten</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>Noch %1</translation>
    </message>
    <message>
        <source>Propose a plate…</source>
        <translation>Platte vorschlagen…</translation>
    </message>
    <message>
        <source>Not counted: %1 and %2 more</source>
        <translation>Zählt nicht: %1 und %2 weitere</translation>
    </message>
    <message>
        <source>Not counted: %1</source>
        <translation>Zählt nicht: %1</translation>
    </message>
</context>
<context>
    <name>pw::gui::Window</name>
    <message>
        <source>Print preview</source>
        <translation>Druckvorschau</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Throw the changes away</source>
        <translation>Änderungen wegwerfen</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Zurück zum Auftrag</translation>
    </message>
    <message>
        <source>Do not write</source>
        <translation>Nicht schreiben</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Jobs (*.plate.json);;All files (*)</source>
        <translation>Aufträge (*.plate.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Squeeze: disc over a full ring</source>
        <translation>Niederdrücken: Scheibe über den ganzen Kreis</translation>
    </message>
    <message>
        <source>Squeeze: bar, two at a time</source>
        <translation>Niederdrücken: Flachstück, je zwei auf einmal</translation>
    </message>
    <message>
        <source>Pull: plate with bolts</source>
        <translation>Abziehen: Platte mit Schrauben</translation>
    </message>
    <message>
        <source>Pull: strongback on two legs</source>
        <translation>Abziehen: Traverse auf zwei Zugstangen</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Back to what is saved</source>
        <translation>Zurück zum Gespeicherten</translation>
    </message>
    <message>
        <source>Print preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Preferences…</source>
        <translation>Einstellungen…</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Not known here and kept as it is: %1.</source>
        <translation>Hier nicht bekannt und unverändert behalten: %1.</translation>
    </message>
    <message>
        <source>Not known here</source>
        <translation>Hier nicht bekannt</translation>
    </message>
    <message>
        <source>Changed since saved</source>
        <translation>Geändert seit dem Speichern</translation>
    </message>
    <message>
        <source>Not saved yet</source>
        <translation>Noch nicht gespeichert</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>%1[*] - Platewright</source>
        <translation>%1[*] - Platewright</translation>
    </message>
    <message>
        <source>The verdict is still being worked out. Try again in a moment.</source>
        <translation>Das Ergebnis wird noch gerechnet. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The verdict is “%1”. %2

The file will say so on its face.</source>
        <translation>Das Ergebnis ist „%1“. %2

Die Datei wird das sichtbar tragen.</translation>
    </message>
    <message>
        <source>Write it all the same</source>
        <translation>Trotzdem schreiben</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>%1 was not written: %2</source>
        <translation>%1 wurde nicht geschrieben: %2</translation>
    </message>
    <message>
        <source>Try a tool you have…</source>
        <translation>Vorhandenes Werkzeug versuchen…</translation>
    </message>
    <message>
        <source>New here? The help walks through a first job, figure by figure. F1 opens it at any time.</source>
        <translation>Neu hier? Die Hilfe geht einen ersten Auftrag durch, Angabe für Angabe. F1 öffnet sie jederzeit.</translation>
    </message>
    <message>
        <source>A first job</source>
        <translation>Ein erster Auftrag</translation>
    </message>
    <message>
        <source>the printer does not take it</source>
        <translation>der Drucker nimmt es nicht an</translation>
    </message>
    <message>
        <source>Other plates on the same piece</source>
        <translation>Weitere Platten auf demselben Stück</translation>
    </message>
    <message>
        <source>Write</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Print the paper template…</source>
        <translation>Papierschablone drucken…</translation>
    </message>
    <message>
        <source>Several plates from one piece…</source>
        <translation>Mehrere Platten aus einem Stück…</translation>
    </message>
    <message>
        <source>Several plates from one piece</source>
        <translation>Mehrere Platten aus einem Stück</translation>
    </message>
    <message>
        <source>How many of this plate?</source>
        <translation>Wie viele von dieser Platte?</translation>
    </message>
    <message>
        <source>How large is the piece? Type it like 300 x 400 mm or 12 in x 20 in.</source>
        <translation>Wie groß ist das Stück? Zum Beispiel 300 x 400 mm oder 12 in x 20 in eingeben.</translation>
    </message>
    <message>
        <source>Not a number of plates. Type it like 2.</source>
        <translation>Keine Anzahl von Platten. Zum Beispiel 2 eingeben.</translation>
    </message>
    <message>
        <source>%1 has figures to mend; open it first.</source>
        <translation>In %1 sind Angaben zu berichtigen; erst öffnen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Not printed: %1</source>
        <translation>Nicht gedruckt: %1</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Open a rack</source>
        <translation>Ein Regal öffnen</translation>
    </message>
    <message>
        <source>Racks (*.json);;All files (*)</source>
        <translation>Regale (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Read this rack</source>
        <translation>Dieses Regal lesen</translation>
    </message>
    <message>
        <source>Propose a plate…</source>
        <translation>Platte vorschlagen…</translation>
    </message>
</context>
<context>
    <name>pw::gui::WorkBar</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>%1, %2 %</source>
        <comment>what is being done, how far</comment>
        <translation>%1, %2 %</translation>
    </message>
</context>
<context>
    <name>pw::paper::Paper</name>
    <message>
        <source>A–A</source>
        <translation>A–A</translation>
    </message>
    <message>
        <source>%1 thick</source>
        <translation>%1 dick</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>stop here, thread dry</source>
        <translation>hier Schluss, Gewinde trocken</translation>
    </message>
    <message>
        <source>stop here, thread oiled</source>
        <translation>hier Schluss, Gewinde geölt</translation>
    </message>
    <message>
        <source>stop here, moly on the thread</source>
        <translation>hier Schluss, Molypaste am Gewinde</translation>
    </message>
    <message>
        <source>Hole centres, inch</source>
        <translation>Lochmitten, Zoll</translation>
    </message>
    <message>
        <source>Hole centres, mm</source>
        <translation>Lochmitten, mm</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>from left</source>
        <translation>von links</translation>
    </message>
    <message>
        <source>from foot</source>
        <translation>von unten</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Set the dividers</source>
        <translation>Zirkel einstellen</translation>
    </message>
    <message>
        <source>pin circle, radius</source>
        <translation>Lochkreis, Radius</translation>
    </message>
    <message>
        <source>hole to next hole</source>
        <translation>Loch zum nächsten</translation>
    </message>
    <message>
        <source>hole to next but one</source>
        <translation>Loch zum übernächsten</translation>
    </message>
    <message>
        <source>hole to opposite hole</source>
        <translation>Loch zum gegenüber</translation>
    </message>
    <message>
        <source>bore to hole %1</source>
        <translation>Bohrung zu Loch %1</translation>
    </message>
    <message>
        <source>rim, radius</source>
        <translation>Rand, Radius</translation>
    </message>
    <message>
        <source>Make them</source>
        <translation>So fertigen</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Drill up: %1.</source>
        <translation>Stufenweise bohren: %1.</translation>
    </message>
    <message>
        <source>Holes first, then the rim. Holes true to %1.</source>
        <translation>Erst die Löcher, dann der Rand. Löcher auf %1 genau.</translation>
    </message>
    <message>
        <source>Make %1 plates alike.</source>
        <translation>%1 gleiche Platten fertigen.</translation>
    </message>
    <message>
        <source>most load</source>
        <translation>größte Last</translation>
    </message>
    <message>
        <source>stop here, on the gauge</source>
        <translation>hier Schluss, am Manometer</translation>
    </message>
    <message>
        <source>Stamp this on the plate</source>
        <translation>Auf der Platte einprägen</translation>
    </message>
    <message>
        <source>Nothing to stamp: do not use</source>
        <translation>Nichts einprägen: nicht benutzen</translation>
    </message>
    <message>
        <source>The tool is good for %1 where it stops.</source>
        <translation>Das Werkzeug ist gut für %1, wo Schluss ist.</translation>
    </message>
    <message>
        <source>This job takes %1.</source>
        <translation>Dieser Auftrag braucht %1.</translation>
    </message>
    <message>
        <source>Prove it once</source>
        <translation>Einmal prüfen</translation>
    </message>
    <message>
        <source>Load it to %1.</source>
        <translation>Bis %1 belasten.</translation>
    </message>
    <message>
        <source>On solid packing, no springs: load it to %1.</source>
        <translation>Auf festen Unterlagen, ohne Federn: bis %1 belasten.</translation>
    </message>
    <message>
        <source>Load it to %1, about %2 on the wrench.</source>
        <translation>Bis %1 belasten, etwa %2 am Schlüssel.</translation>
    </message>
    <message>
        <source>On solid packing, no springs: load it to %1, about %2 on the wrench.</source>
        <translation>Auf festen Unterlagen, ohne Federn: bis %1 belasten, etwa %2 am Schlüssel.</translation>
    </message>
    <message>
        <source>A dial from %1 off the middle to the rim reads %2, and goes back to within %3. If it stays bent, scrap it.</source>
        <translation>Eine Messuhr von %1 neben der Mitte zum Rand zeigt %2 und geht bis auf %3 zurück. Bleibt die Platte krumm, verschrotten.</translation>
    </message>
    <message>
        <source>The plate as a gauge</source>
        <translation>Die Platte als Kraftmesser</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>dial</source>
        <translation>Messuhr</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Checks, weakest first</source>
        <translation>Prüfungen, schwächste zuerst</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>To set up</source>
        <translation>Aufsetzen</translation>
    </message>
    <message>
        <source>To squeeze</source>
        <translation>Niederdrücken</translation>
    </message>
    <message>
        <source>To pull</source>
        <translation>Abziehen</translation>
    </message>
    <message>
        <source>To let up</source>
        <translation>Ablassen</translation>
    </message>
    <message>
        <source>Keepers out</source>
        <translation>Keile heraus</translation>
    </message>
    <message>
        <source>Keepers in</source>
        <translation>Keile drin</translation>
    </message>
    <message>
        <source>Do not pull with this tool.</source>
        <translation>Mit diesem Werkzeug nicht abziehen.</translation>
    </message>
    <message>
        <source>Do not squeeze with this plate.</source>
        <translation>Mit dieser Platte nicht niederdrücken.</translation>
    </message>
    <message>
        <source>Turns and torque</source>
        <translation>Umdrehungen und Drehmoment</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>Umdr.</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Drehmoment</translation>
    </message>
    <message>
        <source>Thread in hand</source>
        <translation>Gewinde übrig</translation>
    </message>
    <message>
        <source>to the end</source>
        <translation>bis zum Ende</translation>
    </message>
    <message>
        <source>to the shank</source>
        <translation>bis zum Schaft</translation>
    </message>
    <message>
        <source>The screw needs at least %1 of thread.</source>
        <translation>Die Spindel braucht mindestens %1 Gewinde.</translation>
    </message>
    <message>
        <source>Log of uses</source>
        <translation>Einsätze</translation>
    </message>
    <message>
        <source>Straight edge and dial before each use. Retire the plate when its flatness has drifted %1.</source>
        <translation>Vor jedem Einsatz Haarlineal und Messuhr. Die Platte ausmustern, wenn sich ihre Ebenheit um %1 verändert hat.</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>used on</source>
        <translation>gebraucht an</translation>
    </message>
    <message>
        <source>most torque or dial</source>
        <translation>größtes Moment, Messuhr</translation>
    </message>
    <message>
        <source>zero reading</source>
        <translation>Nullanzeige</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>Taken for granted</source>
        <translation>Vorausgesetzt</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Puller plate, %1, %2</source>
        <translation>Abzieherplatte, %1, %2</translation>
    </message>
    <message>
        <source>Compressor plate, %1, %2</source>
        <translation>Druckplatte, %1, %2</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>aus %1</translation>
    </message>
    <message>
        <source>weighs %1</source>
        <translation>wiegt %1</translation>
    </message>
    <message>
        <source>inch</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Drawn 1:%1, sizes in %2. Measure from the two thick edges of the piece.</source>
        <translation>Gezeichnet 1:%1, Maße in %2. Von den zwei dicken Kanten des Stücks aus messen.</translation>
    </message>
    <message>
        <source>Drawn 1:%1, sizes in %2. Measure from the thick edges, which touch the rim.</source>
        <translation>Gezeichnet 1:%1, Maße in %2. Von den dicken Kanten aus messen, die den Rand berühren.</translation>
    </message>
    <message>
        <source>Measure this first</source>
        <translation>Zuerst das nachmessen</translation>
    </message>
    <message>
        <source>100 mm</source>
        <translation>100 mm</translation>
    </message>
    <message>
        <source>4 in</source>
        <translation>4 in</translation>
    </message>
    <message>
        <source>100 mm must be 100 mm and 4 in be 4 in, by a steel rule. If not, print at 100 %.</source>
        <translation>100 mm müssen 100 mm sein und 4 in müssen 4 in sein, am Stahlmaß. Sonst mit 100 % drucken.</translation>
    </message>
    <message>
        <source>sheet %1 lies on here</source>
        <translation>hier liegt Blatt %1 auf</translation>
    </message>
    <message>
        <source>cut here</source>
        <translation>hier schneiden</translation>
    </message>
    <message>
        <source>sheet %1 of %2: row %3 of %4, column %5 of %6</source>
        <translation>Blatt %1 von %2: Reihe %3 von %4, Spalte %5 von %6</translation>
    </message>
    <message>
        <source>one sheet</source>
        <translation>ein Blatt</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Bohrung</translation>
    </message>
    <message>
        <source>hole %1</source>
        <translation>Loch %1</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>mill %1</source>
        <translation>fräsen: %1</translation>
    </message>
    <message>
        <source>burn %1</source>
        <translation>brennen: %1</translation>
    </message>
    <message>
        <source>mill to the line</source>
        <translation>bis zur Linie fräsen</translation>
    </message>
    <message>
        <source>burn to the line</source>
        <translation>bis zur Linie brennen</translation>
    </message>
    <message>
        <source>drill %1, tap %2</source>
        <translation>bohren: %1, Gewinde %2</translation>
    </message>
    <message>
        <source>drill %1</source>
        <translation>bohren: %1</translation>
    </message>
    <message>
        <source>open to the rim</source>
        <translation>zum Rand offen</translation>
    </message>
    <message>
        <source>Plate without a title</source>
        <translation>Platte ohne Titel</translation>
    </message>
    <message>
        <source>%1 thick, %2, %3.</source>
        <translation>%1 dick, %2, %3.</translation>
    </message>
    <message>
        <source>One plate of %1.</source>
        <translation>Eine von %1 Platten.</translation>
    </message>
    <message>
        <source>Full size.</source>
        <translation>Maßstab 1:1.</translation>
    </message>
    <message>
        <source>Hold it to the part before you cut, the holes cut out of the paper. Go: every bolt stands in the middle of its hole. No-go: one does not; measure again. Then glue it down and punch every dot through the paper.</source>
        <translation>Vor dem Schneiden ans Teil halten, die Löcher aus dem Papier geschnitten. Gut: jede Schraube steht mitten in ihrem Loch. Ausschuss: eine nicht; neu messen. Dann aufkleben und jeden Punkt durch das Papier ankörnen.</translation>
    </message>
    <message>
        <source>Hang it on the pins before you cut, the holes cut out of the paper. Go: every pin stands in the middle of its hole. No-go: one does not; measure again. Then glue it down and punch every dot through the paper.</source>
        <translation>Vor dem Schneiden auf die Bolzen hängen, die Löcher aus dem Papier geschnitten. Gut: jeder Bolzen steht mitten in seinem Loch. Ausschuss: einer nicht; neu messen. Dann aufkleben und jeden Punkt durch das Papier ankörnen.</translation>
    </message>
    <message>
        <source>%1, one sheet. Print at 100 %, not fitted to the page, and measure the ruler first.</source>
        <translation>%1, ein Blatt. Mit 100 % drucken, nicht an die Seite angepasst, und zuerst das Lineal nachmessen.</translation>
    </message>
    <message>
        <source>%1, %2 sheets: %3 down, %4 across. Print at 100 %, not fitted to the page, and measure the ruler on every sheet first.</source>
        <translation>%1, %2 Blätter: %3 untereinander, %4 nebeneinander. Mit 100 % drucken, nicht an die Seite angepasst, und zuerst auf jedem Blatt das Lineal nachmessen.</translation>
    </message>
    <message>
        <source>Cut each sheet at its dashed left and upper line and lay it on the one before, the diamonds closed.</source>
        <translation>Jedes Blatt an seiner gestrichelten linken und oberen Linie schneiden und so auf das vorige legen, dass sich die Rauten schließen.</translation>
    </message>
    <message>
        <source>not written: at full size this takes %1 sheets of %2, more than %3; lay it out by its figures instead</source>
        <translation>nicht geschrieben: in wahrer Größe braucht das %1 Blätter %2, mehr als %3; stattdessen nach den Maßen anreißen</translation>
    </message>
    <message>
        <source>%1, one page.</source>
        <translation>%1, eine Seite.</translation>
    </message>
    <message>
        <source>%1, %2 pages.</source>
        <translation>%1, %2 Seiten.</translation>
    </message>
    <message>
        <source>Rim %1.</source>
        <translation>Rand %1.</translation>
    </message>
    <message>
        <source>Pin circle %1.</source>
        <translation>Lochkreis %1.</translation>
    </message>
    <message>
        <source>Dividers, hole to next: %1.</source>
        <translation>Zirkel, Loch zum nächsten: %1.</translation>
    </message>
    <message>
        <source>DO NOT USE: %1</source>
        <translation>NICHT BENUTZEN: %1</translation>
    </message>
    <message>
        <source>not written: this program has no type to write with</source>
        <translation>nicht geschrieben: diesem Programm fehlt die Schrift zum Schreiben</translation>
    </message>
    <message>
        <source>not a kind of paper this version writes; name it like plate.pdf</source>
        <translation>keine Art Papier, die diese Version schreibt; nennen wie plate.pdf</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>a date: day, month, year</comment>
        <translation>%1. %2 %3</translation>
    </message>
    <message>
        <source>unknown scrap</source>
        <translation>unbekannter Schrott</translation>
    </message>
</context>
</TS>
