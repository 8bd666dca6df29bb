package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Identities that hold for every shape whatever its formula. Origin of every expectation: analytic. */
class ShapeBatteryTest {
    private static final String TEXTS = "org.fizzhull.shape.ShapeBattery#texts";

    @ParameterizedTest
    @MethodSource(TEXTS)
    void profileBeginsWithTheWholeAndEndsWithNothing(String text) {
        Shape shape = ShapeText.read(text);
        for (DepthProfile.Exposure exposure : DepthProfile.Exposure.values()) {
            DepthProfile profile = shape.depthProfile(exposure);
            assertThat(profile.volume(0)).isCloseTo(shape.volume(), within(1e-12 * shape.volume()));
            assertThat(profile.volume(profile.deepest())).isZero();
            assertThat(profile.volume(0.999999 * profile.deepest())).isBetween(0.0, 1e-5 * shape.volume());
            assertThat(profile.area(0)).isLessThanOrEqualTo(shape.surface() * (1 + 1e-12));
        }
        DepthProfile all = shape.depthProfile(DepthProfile.Exposure.ALL);
        assertThat(all.area(0)).isCloseTo(shape.surface(), within(1e-12 * shape.surface()));
        assertThat(shape.hollow().isPresent()).isEqualTo(shape.hullVolume() > shape.volume());
    }

    @ParameterizedTest
    @MethodSource(TEXTS)
    void frontIsTheRateAtWhichVolumeFalls(String text) {
        for (DepthProfile.Exposure exposure : DepthProfile.Exposure.values()) {
            DepthProfile profile = ShapeText.read(text).depthProfile(exposure);
            double deepest = profile.deepest();
            double h = 1e-5 * deepest;
            double scale = profile.volume(0) / deepest;
            double before = profile.volume(0);
            for (double share = 0.0137; share < 0.999; share += 0.0173) {
                double d = share * deepest;
                double rate = (profile.volume(d - h) - profile.volume(d + h)) / (2 * h);
                // Central difference: truncation of order h^2 = 1e-10 of the curvature, cancellation 1e-16/1e-5.
                assertThat(profile.area(d)).as("%s at %s", exposure, share).isCloseTo(rate, within(1e-6 * scale));
                assertThat(profile.volume(d)).isLessThan(before);
                before = profile.volume(d);
            }
        }
    }

    @ParameterizedTest
    @MethodSource(TEXTS)
    void shuttingFacesNeverTakesMore(String text) {
        Shape shape = ShapeText.read(text);
        DepthProfile all = shape.depthProfile(DepthProfile.Exposure.ALL);
        for (DepthProfile.Exposure exposure :
                new DepthProfile.Exposure[] {DepthProfile.Exposure.TRAY, DepthProfile.Exposure.OUTSIDE}) {
            DepthProfile fewer = shape.depthProfile(exposure);
            assertThat(fewer.deepest()).isGreaterThanOrEqualTo(all.deepest() * (1 - 1e-12));
            for (double d = 0; d < all.deepest(); d += all.deepest() / 97) {
                assertThat(fewer.volume(d)).isGreaterThanOrEqualTo(all.volume(d) - 1e-12 * shape.volume());
            }
        }
    }

    @ParameterizedTest
    @MethodSource(TEXTS)
    void textIsCanonicalAndReadsBack(String text) {
        Shape shape = ShapeText.read(text);
        assertThat(shape.text()).isEqualTo(text);
        assertThat(ShapeText.read(shape.text())).isEqualTo(shape);
        assertThat(text).startsWith(shape.kind() + "(");
        assertThat(ShapeText.read(text.toUpperCase(java.util.Locale.ROOT)
                        .replace(" MM", "mm")
                        .replace(" G", "g")))
                .isEqualTo(shape);
    }

    @ParameterizedTest
    @MethodSource(TEXTS)
    void boxHoldsCentroidAndVolume(String text) {
        Shape shape = ShapeText.read(text);
        Extents box = shape.extents();
        assertThat(shape.centroid().z()).isStrictlyBetween(0.0, box.height());
        assertThat(Math.abs(shape.centroid().x())).isLessThan(box.length() / 2);
        assertThat(Math.abs(shape.centroid().y())).isLessThan(box.width() / 2);
        assertThat(shape.planArea()).isLessThanOrEqualTo(box.length() * box.width() * (1 + 1e-12));
        assertThat(shape.volume()).isLessThanOrEqualTo(shape.planArea() * box.height() * (1 + 1e-12));
        // Isoperimetric inequality: S^3 >= 36 pi V^2, equality for the ball.
        double ball = 36 * Math.PI * shape.volume() * shape.volume();
        assertThat(Math.pow(shape.surface(), 3)).isGreaterThanOrEqualTo(ball * (1 - 1e-12));
    }

    @ParameterizedTest
    @MethodSource(TEXTS)
    void doubleTheSizeIsEightTimesTheVolume(String text) {
        Shape one = ShapeText.read(text);
        Shape two = ShapeText.read(doubled(text));
        double length = text.startsWith("filled") ? Math.cbrt(2) : 2;
        assertThat(two.volume()).isCloseTo(Math.pow(length, 3) * one.volume(), within(1e-13 * two.volume()));
        assertThat(two.surface()).isCloseTo(Math.pow(length, 2) * one.surface(), within(1e-13 * two.surface()));
        assertThat(two.centroid().z()).isCloseTo(length * one.centroid().z(), within(1e-13));
        for (DepthProfile.Exposure exposure : DepthProfile.Exposure.values()) {
            DepthProfile small = one.depthProfile(exposure);
            DepthProfile large = two.depthProfile(exposure);
            assertThat(large.deepest()).isCloseTo(length * small.deepest(), within(1e-13 * large.deepest()));
            for (double d = 0; d < small.deepest(); d += small.deepest() / 31) {
                assertThat(large.volume(length * d))
                        .isCloseTo(Math.pow(length, 3) * small.volume(d), within(1e-12 * two.volume()));
            }
        }
    }

    /** The same text with every quantity doubled; the count of points stays. */
    private static String doubled(String text) {
        java.util.regex.Matcher number =
                java.util.regex.Pattern.compile("=([0-9.]+) (mm|g)").matcher(text);
        return number.replaceAll(m -> "=" + 2 * Double.parseDouble(m.group(1)) + " " + m.group(2));
    }
}
