package org.fizzhull.voyage.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import java.util.HashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.voyage.FullVoyage;
import org.fizzhull.voyage.Launch;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;
import org.fizzhull.voyage.VoyageParameters;

/** What holds of any voyage, from the smallest piece to a block of 2 kg, spent or fresh, in cold, hot and shallow water. */
class VoyageProperties {
    private static final String[] SHAPES = {
        "sphere(diameter=5 mm)",
        "sphere(diameter=65 mm)",
        "puck(diameter=200 mm, height=5 mm)",
        "puck(diameter=20 mm, height=200 mm)",
        "block(length=140 mm, width=120 mm, height=110 mm)",
        "egg(length=70 mm, diameter=50 mm)",
        "cone(diameter=60 mm, height=80 mm)",
        "ring(diameter=90 mm, tube=30 mm)",
        "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
        "bowl(diameter=90 mm, wall=5 mm)",
        "bowl(diameter=90 mm, wall=15 mm)",
        "geode(diameter=80 mm, wall=14 mm, crystals=20 g)"
    };

    private static final Map<String, VoyageForm> FORMS = new HashMap<>();

    /** ANALYTIC: every voyage ends, with numbers, in the bath, its events in order and its carbon on the books. */
    @Property(tries = 300)
    void everyVoyageEnds(
            @ForAll @IntRange(min = 0, max = 11) int kind,
            @ForAll Release release,
            @ForAll @DoubleRange(min = 300, max = 1800) @Scale(6) double density,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double capacity,
            @ForAll @DoubleRange(min = 5, max = 60) @Scale(6) double warmth,
            @ForAll @DoubleRange(min = 0.05, max = 3) @Scale(6) double depth,
            @ForAll @DoubleRange(min = 0.2e-3, max = 3e-3) @Scale(6) double bubble,
            @ForAll @DoubleRange(min = 1e-6, max = 1e-3) @Scale(8) double recession) {
        VoyageForm form = FORMS.computeIfAbsent(
                SHAPES[kind] + release, key -> VoyageForm.of(ShapeText.read(SHAPES[kind]), release));
        Shape shape = ShapeText.read(SHAPES[kind]);
        Piece piece = new Piece(
                shape,
                density * shape.volume() + shape.insetMass(),
                new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, capacity));
        Bath bath = Bath.at(celsius(warmth)).withDepth(depth);
        FizzParameters fizz = new FizzParameters(recession, 2.3, 30e3, 0.5, bubble, 0.45, 0.5, 0.65);
        Voyage voyage = FullVoyage.of(form, bath).run(piece, fizz, VoyageParameters.standard());
        Voyage.Series s = voyage.series();
        double whole = piece.bodyMass() * capacity;
        assertThat(voyage.events().get(voyage.events().size() - 1).kind()).isEqualTo(Voyage.Event.Kind.END);
        assertThat(s.rows()).isLessThan(5000);
        double before = 0;
        for (Voyage.Event event : voyage.events()) {
            assertThat(event.time()).isGreaterThanOrEqualTo(before);
            before = event.time();
        }
        for (int i = 0; i < s.rows(); i++) {
            assertThat(s.gas()[i] + s.dissolved()[i] + s.left()[i]).isCloseTo(whole, within(1e-9 * whole + 1e-300));
            assertThat(s.immersed()[i]).isBetween(0.0, 1.0);
            assertThat(s.size()[i]).isPositive();
            assertThat(Math.abs(s.centreDepth()[i])).isLessThan(depth + 0.2);
            assertThat(s.mass()[i] + s.eroded()[i] + s.gasRate()[i]).isFinite();
            // the tables of the hull's two directions are apart by up to a fiftieth near a tip
            assertThat(s.centreDepth()[i] + s.size()[i] / 2).isLessThan(depth + 0.02 * s.size()[0] + 1e-3);
        }
        QuickVoyage quick = new QuickVoyage(form, bath);
        quick.run(Launch.of(piece, bath, fizz, VoyageParameters.standard()));
        assertThat(quick.fizzTime()).isPositive().isFinite();
        assertThat(quick.margin()).isNotNegative().isFinite();
    }
}
