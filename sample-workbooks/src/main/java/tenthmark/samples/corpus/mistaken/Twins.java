package tenthmark.samples.corpus.mistaken;

import java.util.List;

/** The twins, each with three to five mistakes. */
final class Twins {

  private Twins() {}

  static List<Twin> all() {
    return List.of(
        plank(),
        axle(),
        radios(),
        bobine(),
        lente(),
        balken(),
        disque(),
        nabendynamo(),
        ratios(),
        cyclometer(),
        kalibriergerade(),
        coaster(),
        bounds(),
        student(),
        bolas(),
        teile(),
        guion(),
        correccion(),
        abkuehlung(),
        jumelles(),
        colonne(),
        kugeln(),
        questions());
  }

  private static Twin plank() {
    return new Twin("plank")
        .on("Sheet1")
        .mistake(
            "C4",
            "wrong-unit",
            "cm",
            "The plank is 1.800 m long, not 1.800 cm: the speeds below are only right with metres.")
        .mistake(
            "D9",
            "subtracted-uncertainties",
            "=C9*(0.2/B9-$E$4/$B$4) :: 0.00",
            "Relative uncertainties of a quotient add up; you have subtracted that of the"
                + " distance.")
        .mistake(
            "F10",
            "factor-forgotten",
            "=E10*(0.2/B10+$E$4/$B$4) :: 0.00",
            "The time enters squared, so its relative uncertainty counts twice, as in the other"
                + " rows.")
        .mistake(
            "E9",
            "badly-rounded",
            "=2*$B$4/B9^2 :: 0.00000",
            "Five decimals beside an uncertainty of 0.02: the value ends where its uncertainty"
                + " ends.")
        .mistake(
            "B11",
            "decimal-slip",
            "22.0",
            "22.0 s does not fit between 2.8 s and 1.9 s: the decimal point has slipped, 2.2 s.");
  }

  private static Twin axle() {
    return new Twin("axle-sources")
        .on("Axle")
        .mistake(
            "C8",
            "factor-forgotten",
            "=B8*(C6/B6+C5/B5) :: 0.00",
            "The diameter enters squared, so its relative uncertainty counts twice.")
        .mistake(
            "B9",
            "typed-over",
            "7.85",
            "The density is typed in, and just the table's value; let the sheet divide m by V.")
        .mistake(
            "C16",
            "omitted-contribution",
            "=SUM(C14:C14) :: 0.0",
            "The total leaves out the contribution of the ruler itself.")
        .mistake(
            "D20",
            "copied-rationale",
            "millimetre marks, a fifth of one at each end",
            "This reason is copied from the length; a vernier with steps of 0.02 mm has no"
                + " millimetre marks to estimate a fifth of.");
  }

  private static Twin radios() {
    return new Twin("grosor-radios")
        .on("Hoja1")
        .mistake(
            "H7",
            "short-range",
            "=STDEV(B6:B12) :: 0.000",
            "La desviación típica deja fuera la última lectura de Beta (fila 13).")
        .mistake(
            "I8",
            "wrong-n",
            "=H8/SQRT(5) :: 0.000",
            "Son ocho lecturas: hay que dividir entre la raíz de 8, no de 5.")
        .mistake(
            "K6",
            "spread-of-single",
            "=H6+J6 :: 0.000",
            "Para la media cuenta s/√n, no la desviación típica de una lectura.")
        .mistake(
            "G11",
            "subtracted-uncertainties",
            "=K7-K6 :: 0.000",
            "Al restar dos medias sus errores se suman; aquí se restan.");
  }

  private static Twin bobine() {
    return new Twin("bobine-ohm")
        .on("Mesures")
        .mistake(
            "F6",
            "sum-for-quadrature",
            "=E6*(D6/C6+B6/A6) :: 0.0",
            "Partout ailleurs les incertitudes relatives se composent en quadrature ; ici elles"
                + " sont simplement additionnées.")
        .mistake(
            "D7",
            "zero-uncertainty",
            "0.00",
            "Une tension lue sur un multimètre n'a pas une incertitude nulle ; les autres lignes"
                + " ont 0,02 V.")
        .mistake(
            "E9",
            "stale-value",
            "47.9",
            "Cette valeur est collée d'un ancien calcul et ne correspond plus à U/I (47,1 Ω).")
        .mistake(
            "C13",
            "swapped-x-y",
            "=1000*SLOPE(A5:A9,C5:C9) :: 0.00",
            "PENTE veut d'abord les ordonnées (U), puis les abscisses (I) : vous avez calculé"
                + " 1/R.");
  }

  private static Twin lente() {
    return new Twin("lente-faro")
        .on("Óptica")
        .mistake("B6", "negative-uncertainty", "-0.3", "Un error no puede ser negativo.")
        .mistake(
            "C8",
            "decimal-slip",
            "169.0",
            "169 cm no puede ser: el banco no es tan largo y las demás distancias dan 16,9 cm.")
        .mistake(
            "F9",
            "wrong-formula",
            "=E9*(B9/A9^2+D9/C9^2) :: 0.0",
            "Falta un cuadrado: el error de f es f² por la suma, como en las otras filas; así no"
                + " sale ni en centímetros.")
        .mistake(
            "E10", "short-range", "=AVERAGE(E6:E8) :: 0.0", "La media deja fuera la última fila.");
  }

  private static Twin balken() {
    return new Twin("drehmoment-balken")
        .on("Balken")
        .mistake(
            "G5",
            "wrong-unit",
            "Drehmoment M in N/m",
            "Ein Drehmoment hat die Einheit N·m, nicht N/m.")
        .mistake(
            "H8",
            "subtracted-uncertainties",
            "=H6-H7 :: 0.00",
            "Auch bei einer Differenz addieren sich die Fehler.")
        .mistake(
            "G9",
            "wrong-cell",
            "=C9*$B$3*E6 :: 0.00",
            "Hier steht der Hebelarm aus Versuch 1 in der Formel statt der aus dieser Zeile.")
        .mistake(
            "F10",
            "decimal-slip",
            "0.03",
            "Überall sonst sind es 3 mm = 0,003 m, und so ist es auch begründet; das Komma ist"
                + " verrutscht.");
  }

  private static Twin disque() {
    return new Twin("disque-eau")
        .on("Calorimètre")
        .mistake(
            "D11",
            "subtracted-uncertainties",
            "=D9-D7 :: 0.0",
            "Dans une différence les incertitudes s'ajoutent ; elle ne peut pas être nulle.")
        .mistake(
            "C14",
            "wrong-cell",
            "=C5*C13*C11/(C6*C8) :: 0.00",
            "Il faut diviser par le refroidissement du disque (75,6 K), pas par sa température de"
                + " départ.")
        .mistake(
            "E14",
            "wrong-unit",
            "J/g",
            "Une chaleur massique se donne en J/(g·K) ; il manque le kelvin.")
        .mistake(
            "F16",
            "false-agreement",
            "plus petit que l'incertitude : accord",
            "L'écart avec la table dépasse l'incertitude trouvée : on ne peut pas conclure à un"
                + " accord.");
  }

  private static Twin nabendynamo() {
    return new Twin("nabendynamo-prozente")
        .on("Wirkungsgrad")
        .mistake(
            "E6",
            "copied-rationale",
            "Federwaage zittert um ein Zwanzigstel",
            "Diese Begründung gehört zum Drehmoment; die Drehfrequenz wird nicht mit einer"
                + " Federwaage gemessen.")
        .mistake(
            "B7",
            "decimal-slip",
            "58.5",
            "58,5 V liefert kein Nabendynamo: gemeint sind 5,85 V, sonst wird der Wirkungsgrad"
                + " größer als eins.")
        .mistake(
            "B11",
            "factor-forgotten",
            "=PI()*B6*B5 :: 0.0",
            "In der Zeile steht P₁ = 2π·n·M; in der Formel fehlt die Zwei.")
        .mistake(
            "D13",
            "wrong-propagation",
            "=D11*D12 :: 0%",
            "Bei einem Quotienten werden die relativen Fehler addiert, nicht multipliziert.");
  }

  private static Twin ratios() {
    return new Twin("tyre-ratios")
        .on("Amontons")
        .mistake(
            "E8",
            "wrong-conversion",
            "=A8/$B$4 :: 0.0000",
            "The temperature must be turned into kelvin first: 273.15 is missing here.")
        .mistake(
            "H9",
            "wrong-formula",
            "=D9*$B$3 :: 0.00",
            "Dividing by a constant divides the error too; here it is multiplied.")
        .mistake("D10", "decimal-slip", "0.3", "Your reason and all other rows say 0.03 bar.");
  }

  private static Twin cyclometer() {
    return new Twin("old-cyclometer")
        .on("Counter")
        .mistake(
            "E7",
            "wrong-cell",
            "=C7/B8 :: 0.0",
            "These counts were divided by the gate time of the next row.")
        .mistake(
            "D8",
            "wrong-cell",
            "=SQRT(B8) :: 0",
            "The root must be that of the counts, not of the gate time.")
        .mistake(
            "H9",
            "sum-for-quadrature",
            "=F9+F$6 :: 0.00",
            "Your sheet says that independent errors add in quadrature; here they are simply"
                + " added.")
        .mistake(
            "G10", "omitted-step", "=E10 :: 0.00", "The background was not taken off in this row.");
  }

  private static Twin kalibriergerade() {
    return new Twin("kalibriergerade")
        .on("Kalibrierung")
        .mistake(
            "C11",
            "digits-swapped",
            "1711",
            "1711 N fällt aus der Geraden heraus; vermutlich sind zwei Ziffern vertauscht (1171"
                + " N).")
        .mistake(
            "E17",
            "omitted-contribution",
            "=$G$8+B17*$G$6 :: 0",
            "Der Ablesefehler der Anzeige (b·Δx) fehlt in dieser Zeile.")
        .mistake(
            "D18",
            "wrong-cell",
            "=$G$7+$G$5*B17 :: 0",
            "Hier steht die Anzeige von Speiche 5 in der Formel.");
  }

  private static Twin coaster() {
    return new Twin("coaster-energy")
        .on("Coasting")
        .mistake(
            "E6",
            "decimal-slip",
            "84.0",
            "84 m/s is 300 km/h: the decimal point has slipped, 8.4 m/s.")
        .mistake(
            "D7",
            "wrong-conversion",
            "=C7/B7 :: 0.0",
            "The column is in percent; the factor 100 is missing.")
        .mistake(
            "H8",
            "wrong-formula",
            "=E8/(2*9.81*B8) :: 0.00",
            "The speed must be squared, as the heading says.")
        .mistake(
            "I9",
            "factor-forgotten",
            "=H9*(D9+G9)/100 :: 0.00",
            "The speed enters squared, so its percentage counts twice.");
  }

  private static Twin bounds() {
    return new Twin("lever-bounds")
        .on("Lever")
        .mistake(
            "E5",
            "half-forgotten",
            "=D5-B5 :: 0.0",
            "The heading says half of the gap, and you have taken all of it.")
        .mistake("F6", "wrong-unit", "cm", "A brake lever is not 76 cm long: millimetres.")
        .mistake(
            "G7",
            "copied-rationale",
            "spring scale, the pointer swings one and a half newtons either way",
            "This reason is copied from the force; the short arm was measured with a calliper.")
        .mistake(
            "B9",
            "wrong-cell",
            "=B5*B6/B7 :: 0.0",
            "The smallest quotient has the largest divisor: D7, not B7.");
  }

  private static Twin student() {
    return new Twin("student-faktor")
        .on("Auswertung")
        .mistake(
            "B12",
            "short-range",
            "=AVERAGE(B5:B9) :: 0.00",
            "Der Mittelwert lässt die letzte Messung aus.")
        .mistake(
            "B13",
            "population-spread",
            "=STDEVP(B5:B10) :: 0.000",
            "Für eine Stichprobe wird durch n−1 geteilt: STABW, nicht STABWN.")
        .mistake(
            "C15",
            "spread-of-single",
            "=C14*C13 :: 0.000",
            "Der Vertrauensbereich des Mittelwerts braucht noch die Teilung durch √n.")
        .mistake(
            "C18", "wrong-number", "=C12/10 :: 0.000", "Gestoppt wurden 5 Schwingungen, nicht 10.");
  }

  private static Twin bolas() {
    return new Twin("bolas-frecuencias")
        .on("Bolas")
        .mistake(
            "B10",
            "short-range",
            "=SUM(B5:B8)",
            "La suma deja fuera las cuatro bolas de la última fila.")
        .mistake(
            "B13",
            "wrong-n",
            "=B12/SQRT(5) :: 0.000",
            "Cinco son las filas; las bolas son cuarenta, y esa es la n.")
        .mistake(
            "A17",
            "wrong-unit",
            "volumen de una bola (cm³)",
            "Con el diámetro en milímetros el volumen sale en mm³.")
        .mistake(
            "B18",
            "factor-forgotten",
            "=B17*B15/B11 :: 0.0",
            "El diámetro va al cubo: su error relativo cuenta tres veces.");
  }

  private static Twin teile() {
    return new Twin("teileliste")
        .on("Stückliste")
        .mistake(
            "F5",
            "factor-forgotten",
            "=D5 :: 0.0",
            "Bei 32 gleichen Speichen vervielfacht sich auch der Fehler.")
        .mistake(
            "C6",
            "decimal-slip",
            "9.80",
            "Ein Nippel wiegt keine 9,8 g: Das Komma ist verrutscht, 0,98 g.")
        .mistake("E9", "short-range", "=SUM(E6:E8) :: 0", "Die Summe lässt die Speichen aus.")
        .mistake(
            "F9",
            "quadrature-for-sum",
            "=SQRT(SUMSQ(F5:F8)) :: 0",
            "Auf dem ganzen Blatt werden Fehler einfach addiert, hier auf einmal quadratisch.")
        .mistake(
            "G12",
            "false-agreement",
            "kleiner als sein Fehler, nichts vergessen",
            "Der Unterschied ist viel größer als sein Fehler; der Satz stimmt nicht.");
  }

  private static Twin guion() {
    return new Twin("guion-numerado")
        .on("Guion")
        .mistake(
            "F8",
            "copied-rationale",
            "colgada del peso de maletas, que salta de 20 g en 20 g",
            "Este motivo está copiado del peso; aquí se mide una temperatura.")
        .mistake(
            "D9", "subtracted-uncertainties", "=D8-D7 :: 0.0", "En una resta los errores se suman.")
        .mistake(
            "C10", "wrong-formula", "=C5*C6/2 :: 0", "La energía es m·v²/2; falta el cuadrado.")
        .mistake(
            "C11",
            "typed-over",
            "14",
            "El resultado está escrito a mano y ya no es el cociente de las dos filas de arriba.")
        .mistake("E11", "wrong-unit", "J·K", "Julios por grado son J/K.");
  }

  private static Twin correccion() {
    return new Twin("correccion-de-cero")
        .on("Zapatas")
        .mistake(
            "C11", "wrong-sign", "=B11+$B$5 :: 0.000", "El cero se resta, como en las demás filas.")
        .mistake(
            "B12",
            "decimal-slip",
            "67.300",
            "Una zapata no mide 67 mm de grosor: la coma está corrida, 6,730 mm.")
        .mistake(
            "D12",
            "omitted-contribution",
            "=$B$6 :: 0.000",
            "La corrección es una resta de dos lecturas: el error de la del cero también cuenta.")
        .mistake(
            "F13",
            "wrong-sign",
            "=C13-E13 :: 0.000",
            "El desgaste sale negativo: es el grosor nuevo menos el medido.");
  }

  private static Twin abkuehlung() {
    return new Twin("abkuehlung-uhrzeit")
        .on("Abkühlung")
        .mistake(
            "B9",
            "wrong-cell",
            "=(A9-A8)*1440 :: 0",
            "Die Minuten zählen vom Anfang (A6), nicht von der Zeile davor.")
        .mistake(
            "F10",
            "omitted-contribution",
            "=D10 :: 0.0",
            "In der Differenz steckt auch die Raumluft; deren Fehler fehlt hier.")
        .mistake(
            "G11",
            "wrong-formula",
            "=LOG10(E11) :: 0.00",
            "Gefragt ist der natürliche Logarithmus, hier steht der zur Basis zehn.")
        .mistake(
            "B14",
            "wrong-formula",
            "=LN(2)*B13 :: 0.00",
            "Die Halbwertszeit ist ln 2 geteilt durch λ, nicht mal λ; so stimmt auch die Einheit"
                + " nicht.");
  }

  private static Twin jumelles() {
    return new Twin("feuilles-jumelles")
        .on("Mesures")
        .mistake(
            "D4",
            "wrong-unit",
            "masse (kg)",
            "Un rayon ne pèse pas sept kilogrammes : ce sont des grammes.")
        .on("Incertitudes")
        .mistake(
            "C6",
            "decimal-slip",
            "0.20",
            "La même graduation donne 0,02 mm sur les deux autres lignes.")
        .on("Résultats")
        .mistake(
            "C4",
            "factor-forgotten",
            "=B4*(Incertitudes!D5/Mesures!D5+Incertitudes!C5/Mesures!C5+Incertitudes!B5/Mesures!B5)"
                + " :: 0.00",
            "Le diamètre est au carré : son incertitude relative compte deux fois.")
        .mistake(
            "B6",
            "wrong-cell",
            "=Mesures!D7/(PI()/4*Mesures!C5^2*Mesures!B7/1000) :: 0.00",
            "C'est le diamètre du rayon rouge qui est pris pour le bleu.");
  }

  private static Twin colonne() {
    return new Twin("une-colonne")
        .on("Feuil1")
        .mistake(
            "A6",
            "wrong-unit",
            "incertitude sur h (mm)",
            "L'incertitude est en centimètres comme la hauteur : 5 mm font 0,5 cm.")
        .mistake(
            "A12",
            "decimal-slip",
            "0.02",
            "Votre raison donne 1 mm à chaque bout, donc 0,2 cm et non 0,02 cm.")
        .mistake(
            "A15",
            "degrees",
            "=A10*COS(31.25) :: 0.0",
            "COS attend des radians : 31,25 est l'angle en degrés.");
  }

  private static Twin kugeln() {
    return new Twin("kugellager-texte")
        .on("Kugeln")
        .mistake(
            "E5",
            "badly-rounded",
            "7,832145 ± 0,19",
            "Der Wert endet dort, wo seine Unsicherheit endet: 7,83 ± 0,19.")
        .mistake(
            "D6",
            "decimal-slip",
            "56,5 ± 0,04",
            "Dreimal die relative Unsicherheit von d macht 0,4 mm³, nicht 0,04.")
        .mistake("C7", "missing-uncertainty", "0,26", "Hier fehlt die Unsicherheit der Masse.")
        .mistake(
            "E7",
            "digits-swapped",
            "9,7 ± 0,7",
            "0,26 g durch 32,8 mm³ sind 7,9 g/cm³, nicht 9,7.");
  }

  private static Twin questions() {
    return new Twin("gear-questions")
        .on("Worksheet 5")
        .mistake("E5", "missing-unit", "", "A length needs its unit.")
        .mistake("B10", "missing-rationale", "", "You do not say where the 5 mm come from.")
        .mistake(
            "D16",
            "factor-forgotten",
            "=PI()*D5 :: 0",
            "The path is 2π times the arm, so its uncertainty is 2π times that of the arm.")
        .mistake(
            "B22",
            "inverted",
            "=B16/B19 :: 0.00",
            "How many times as far as the foot: the bicycle's way divided by the foot's, not the"
                + " other way round.");
  }
}
