package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Optional;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Test;

/** What a program hands in by mistake is told for what it is. Expected: the contract of each method. */
class EmbeddedMistakesTest {
    private static final Shape BALL = Sphere.ofDiameter(millimetres(65));

    /** Nothing is drawn where nothing is uncertain: the central values, and no chance. */
    @Test
    void withoutAnUncertainInputThereIsNoChance() {
        Factors none = Factors.standard();
        for (Input input : Input.values()) {
            none = none.without(input);
        }
        Forecast forecast = FloatPredictor.standard().with(none).forecast(Question.weighed(BALL, grams(138)));
        assertThat(forecast.probability()).isEmpty();
        assertThat(forecast.drivers()).isEmpty();
        assertThat(forecast.spareAtDrop())
                .isEqualTo(FloatPredictor.standard()
                        .with(none)
                        .with(new Sampling(1, 0))
                        .forecast(Question.weighed(BALL, grams(138)))
                        .spareAtDrop());
    }

    @Test
    void aShapeWithoutAVolumeIsToldAsThat() {
        assertThatThrownBy(() -> Question.weighed(new OwnShape(Double.NaN), grams(138)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("a volume of NaN m3");
    }

    @Test
    void aMassThatIsNoNumberIsReadAsOne() {
        assertThatThrownBy(() -> new Piece(BALL, Double.NaN, Piece.Makeup.usual()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("NaN g");
    }

    @Test
    void parametersAreNumbers() {
        assertThatThrownBy(() -> new VoyageParameters(Double.NaN, 0.1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new VoyageParameters(-1e-4, 0.1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new VoyageParameters(1e-4, Double.NaN)).isInstanceOf(Refusal.class);
    }

    @Test
    void aFacetNamesItsVertices() {
        double[] corners = {0, 0, 0, 1, 0, 0, 0, 1, 0};
        assertThatThrownBy(() -> new TriangleMesh(corners, new int[] {0, 1, 3}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("facet 0 names vertex 3 of 3");
    }

    /** A ball that says it has another volume. */
    private record OwnShape(double volume) implements Shape {
        @Override
        public String kind() {
            return "own";
        }

        @Override
        public String text() {
            return "own()";
        }

        @Override
        public double surface() {
            return BALL.surface();
        }

        @Override
        public Vec3 centroid() {
            return BALL.centroid();
        }

        @Override
        public Extents extents() {
            return BALL.extents();
        }

        @Override
        public double planArea() {
            return BALL.planArea();
        }

        @Override
        public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
            return BALL.depthProfile(exposure);
        }

        @Override
        public Optional<Hull> hull() {
            return BALL.hull();
        }
    }
}
