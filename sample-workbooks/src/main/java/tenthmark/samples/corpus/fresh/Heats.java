package tenthmark.samples.corpus.fresh;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Temperatures and pressures. */
@AutoService(Family.class)
public final class Heats implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(disque(), expansion(), rouePendule(), normalised());
  }

  /** A balance of heats; differences of temperatures between. */
  private static Drawing disque() {
    Drawing drawing =
        Draw.fr(
            "disque-eau", "symbol-value-uncertainty-unit", "heat of a brake disc", Writer.CALC_ODS);
    Page page = drawing.page("Calorimètre");
    page.rows(
        """
        1 | Chaleur massique d'un disque de frein
        2 | Compte rendu de Gaspard Montreuil (inventé), binôme absent
        4 | grandeur | symbole | valeur | incertitude | unité | d'où vient l'incertitude
        5 | masse de l'eau | m_e | 250.0 | 0.4 | g | 0,1 g d'affichage et quelques gouttes restées dans le bécher
        6 | masse du disque | m_d | 112.4 | 0.2 | g | affichage à 0,1 g, pesé deux fois
        7 | température de l'eau au départ | θ_e | 19.2 | 0.2 | °C | thermomètre au demi-degré, un peu moins d'une demi-graduation
        8 | température du disque au départ | θ_d | 98.5 | 0.5 | °C | eau bouillante, mais le disque refroidit pendant le transport
        9 | température finale | θ_f | 22.9 | 0.2 | °C | même thermomètre, lu au maximum
        11 | échauffement de l'eau | Δθ_e | =C9-C7 :: 0.0 | =D9+D7 :: 0.0 | K
        12 | refroidissement du disque | Δθ_d | =C8-C9 :: 0.0 | =D8+D9 :: 0.0 | K
        13 | chaleur massique de l'eau (donnée) | c_e | 4.18 | | J/(g·K)
        14 | chaleur massique du disque | c_d | =C5*C13*C11/(C6*C12) :: 0.00 | =C14*(D5/C5+D11/C11+D6/C6+D12/C12) :: 0.00 | J/(g·K)
        15 | valeur des tables, acier | | 0.46 | | J/(g·K)
        16 | écart | | =ABS(C14-C15) :: 0.00 | | J/(g·K) | plus petit que l'incertitude : accord
        """);
    page.bold("A1,A4:F4");
    page.measured("masse de l'eau", "g", "C5").uncertainty("D5").because("F5");
    page.measured("masse du disque", "g", "C6").uncertainty("D6").because("F6");
    page.measured("température de l'eau", "°C", "C7").uncertainty("D7").because("F7");
    page.measured("température du disque", "°C", "C8").uncertainty("D8").because("F8");
    page.measured("température finale", "°C", "C9").uncertainty("D9").because("F9");
    page.calculated("échauffement de l'eau", "K", "C11").number("3.7").uncertainty("D11");
    page.calculated("refroidissement du disque", "K", "C12").number("75.6").uncertainty("D12");
    page.calculated("chaleur massique du disque", "J/(g·K)", "C14")
        .number("0.46")
        .uncertainty("D14");
    page.other(Role.CONSTANT, "C13").other(Role.ACCEPTED, "C15").other(Role.COMPARISON, "C16");
    return drawing;
  }

  /** The same small block for each specimen. */
  private static Drawing expansion() {
    Drawing drawing =
        Draw.en("hot-spokes", "block-per-specimen", "thermal expansion", Writer.POI_XLSX);
    Page page = drawing.page("Expansion");
    page.rows(
        """
        1 | Thermal expansion of workshop scraps
        2 | Nerys Bellweather, Ottokar Lindqvist (made up), Monday
        3 | Length: steel rule, 0.25 mm at each end. Stretch: dial gauge in steps of 0.01 mm, one step to read and one because its foot settles. Temperatures: alcohol thermometer, half a degree.
        """);
    String block =
        """
        %1$s | Specimen: %2$s
        %3$s | length cold (mm) | ± | stretch (mm) | ± | T cold (°C) | ± | T hot (°C) | ±
        %4$s | %5$s | 0.5 | %6$s | 0.02 | 21.0 | 0.5 | %7$s | 0.5
        %8$s | expansion coefficient, in 10⁻⁶/K | | =1000000*C%4$s/(A%4$s*(G%4$s-E%4$s)) :: %10$s | ± | =C%8$s*(B%4$s/A%4$s+D%4$s/C%4$s+(F%4$s+H%4$s)/(G%4$s-E%4$s)) :: %10$s
        %9$s | table: | | %11$s
        """;
    String[][] specimens = {
      {"spoke, stainless", "600.0", "0.72", "93.0", "0.0", "17"},
      {"strip of a rim, aluminium", "600.0", "1.02", "95.0", "0.0", "23"},
      {"pump tube, brass", "450.0", "0.62", "94.0", "0.0", "19"}
    };
    for (int at = 0; at < specimens.length; at++) {
      int top = 5 + 6 * at;
      String[] s = specimens[at];
      page.rows(
          block.formatted(
              top, s[0], top + 1, top + 2, s[1], s[2], s[3], top + 3, top + 4, s[4], s[5]));
      page.bold("A" + top + ",A" + (top + 1) + ":H" + (top + 1));
      int row = top + 2;
      page.measured("length cold", "mm", "A" + row).uncertainty("B" + row).because("A3");
      page.measured("stretch", "mm", "C" + row).uncertainty("D" + row).because("A3");
      page.measured("T cold", "°C", "E" + row).uncertainty("F" + row).because("A3");
      page.measured("T hot", "°C", "G" + row).uncertainty("H" + row).because("A3");
      page.calculated("expansion coefficient", "10⁻⁶/K", "C" + (top + 3))
          .uncertainty("E" + (top + 3));
      page.other(Role.ACCEPTED, "C" + (top + 4));
    }
    return drawing;
  }

  /** Given constants in a table of their own before the readings. */
  private static Drawing rouePendule() {
    Drawing drawing =
        Draw.fr(
            "roue-pendule", "given-constants-first", "wheel as a pendulum", Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Roue");
    page.rows(
        """
        1 | Moment d'inertie d'une roue suspendue par la jante
        2 | Énoncé : Mme Quillévéré (inventée). Rempli par : Lucien Tharaud (inventé)
        4 | Données
        5 | g | 9.81 | m/s² | intensité de la pesanteur
        6 | n | 10 | | oscillations comptées
        7 | J_réf | 0.225 | kg·m² | moment mesuré par l'atelier l'an dernier
        10 | Relevés
        11 | | mesure | incertitude absolue | unité | justification
        12 | masse de la roue m | 1.240 | 0.005 | kg | balance de cuisine à 5 g près
        13 | distance axe-suspension d | 0.295 | 0.002 | m | réglet, 0,5 mm à chaque bout, et 1 mm parce que l'appui est arrondi
        14 | durée de n oscillations t | 15.8 | 0.2 | s | chronomètre à la main, 0,1 s au départ et 0,1 s à l'arrivée
        16 | Exploitation
        17 | période T = t/n | =B14/B6 :: 0.00 | =C14/B6 :: 0.00 | s
        18 | moment autour de la suspension J_s | =B12*B5*B13*B17^2/(4*PI()^2) :: 0.000 | =B18*(C12/B12+C13/B13+2*C17/B17) :: 0.000 | kg·m²
        19 | écart avec J_réf | =ABS(B18-B7) :: 0.000 | | kg·m² | inférieur à l'incertitude, donc compatible
        """);
    page.bold("A1,A4,A10,B11:E11,A16");
    page.other(Role.CONSTANT, "B5").other(Role.COUNT, "B6").other(Role.ACCEPTED, "B7");
    page.measured("masse de la roue m", "kg", "B12").uncertainty("C12").because("E12");
    page.measured("distance d", "m", "B13").uncertainty("C13").because("E13");
    page.measured("durée t", "s", "B14").uncertainty("C14").because("E14");
    page.calculated("période T", "s", "B17").number("1.58").uncertainty("C17");
    page.calculated("moment J_s", "kg·m²", "B18").number("0.227").uncertainty("C18");
    page.other(Role.COMPARISON, "B19");
    return drawing;
  }

  /** Columns divided by a reference. */
  private static Drawing normalised() {
    Drawing drawing =
        Draw.en("tyre-ratios", "normalised-columns", "tyre gas law", Writer.CALC_XLSX);
    Page page = drawing.page("Amontons");
    page.rows(
        """
        1 | Does the pressure of a closed tyre follow the temperature?
        2 | Ignatius Pemberly (invented) - all pressures are absolute
        3 | reference pressure | 1.013 | bar
        4 | reference temperature | 273.15 | K
        6 | θ (°C) | error (°C) | p (bar) | error (bar) | T/T₀ | error | p/p₀ | error | (p/p₀)/(T/T₀) | error
        7 | 4.0 | 0.5 | 4.20 | 0.03 | =(A7+$B$4)/$B$4 :: 0.0000 | =B7/$B$4 :: 0.0000 | =C7/$B$3 :: 0.00 | =D7/$B$3 :: 0.00 | =G7/E7 :: 0.00 | =I7*(H7/G7+F7/E7) :: 0.00
        8 | 13.0 | 0.5 | 4.34 | 0.03 | =(A8+$B$4)/$B$4 :: 0.0000 | =B8/$B$4 :: 0.0000 | =C8/$B$3 :: 0.00 | =D8/$B$3 :: 0.00 | =G8/E8 :: 0.00 | =I8*(H8/G8+F8/E8) :: 0.00
        9 | 22.0 | 0.5 | 4.47 | 0.03 | =(A9+$B$4)/$B$4 :: 0.0000 | =B9/$B$4 :: 0.0000 | =C9/$B$3 :: 0.00 | =D9/$B$3 :: 0.00 | =G9/E9 :: 0.00 | =I9*(H9/G9+F9/E9) :: 0.00
        10 | 31.0 | 0.5 | 4.61 | 0.03 | =(A10+$B$4)/$B$4 :: 0.0000 | =B10/$B$4 :: 0.0000 | =C10/$B$3 :: 0.00 | =D10/$B$3 :: 0.00 | =G10/E10 :: 0.00 | =I10*(H10/G10+F10/E10) :: 0.00
        11 | 40.0 | 0.5 | 4.74 | 0.03 | =(A11+$B$4)/$B$4 :: 0.0000 | =B11/$B$4 :: 0.0000 | =C11/$B$3 :: 0.00 | =D11/$B$3 :: 0.00 | =G11/E11 :: 0.00 | =I11*(H11/G11+F11/E11) :: 0.00
        13 | The last column stays the same within its error, so p is proportional to T.
        14 | θ: probe taped to the rim, it lags behind the air by up to half a degree. p: the gauge has hundredths; read to one, and its card allows two more.
        """);
    page.bold("A1,A6:J6").other(Role.CONSTANT, "B3:B4");
    page.measured("θ", "°C", "A7:A11").uncertainty("B7:B11").because("A14");
    page.measured("p", "bar", "C7:C11").uncertainty("D7:D11").because("A14");
    page.calculated("T/T₀", "", "E7:E11").uncertainty("F7:F11");
    page.calculated("p/p₀", "", "G7:G11").uncertainty("H7:H11");
    page.calculated("(p/p₀)/(T/T₀)", "", "I7:I11")
        .number("4.09", "4.09", "4.08", "4.09", "4.08")
        .uncertainty("J7:J11");
    return drawing;
  }
}
