package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.ChordError;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.body.PolyhedronHull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The same body as a mesh of about 5,000 and of about 100,000 facets (30,000 for most, to save time): the same attitudes, each within what the coarser
 * one says it may be off by, and against closed forms where there are any.
 */
class MeshAttitudesTest {
    /** Density over that of the water, offset of the centre of mass to the side and up, m, and number of attitudes. */
    enum Body {
        /** Four ways, no symmetry that the search uses. */
        PEBBLE(0.8, 0, 4),
        /** One way: an ellipsoid loaded off every axis. */
        LOADED(0.9, 0.002, 1),
        /** A ball with a hollow off its middle. */
        HOLLOW(0.8, 0, 2),
        /** Turns freely about its long axis. */
        LONG(0.8, 0, 1),
        /** Turns any way. */
        BALL(0.9, 0, 1);

        final double ratio;
        final double off;
        final int ways;

        Body(double ratio, double off, int ways) {
            this.ratio = ratio;
            this.off = off;
            this.ways = ways;
        }

        PolyhedronHull hull(int rings) {
            TriangleMesh mesh = switch (this) {
                case PEBBLE -> UnevenBall.of(rings, 0.03, 0.03, 0.03, 0.15);
                case LOADED -> UnevenBall.of(rings, 0.033, 0.03, 0.025, 0);
                case HOLLOW -> UnevenBall.hollow(rings, 0.03, 0.012, 0.01);
                case LONG -> UnevenBall.of(rings, 0.025, 0.025, 0.04, 0);
                case BALL -> UnevenBall.of(rings, 0.03, 0.03, 0.03, 0);
            };
            return new PolyhedronHull(
                    mesh, ChordError.of(mesh).spread() / MassProperties.of(mesh).volume());
        }
    }

    @ParameterizedTest
    @EnumSource(Body.class)
    void fineAndCoarseMeshAgreeWithinTheStatedError(Body body) {
        PolyhedronHull coarse = body.hull(35);
        PolyhedronHull fine = body.hull(body == Body.PEBBLE ? 158 : 90);
        assertThat(fine.facets()).isBetween(6 * coarse.facets(), 22 * coarse.facets());
        double displaced = body.ratio * coarse.volume();
        Vec3 off = new Vec3(body.off, 0, body.off);
        List<Attitude> some = Attitudes.find(coarse, coarse.centroid().plus(off), 1, 1 / displaced);
        List<Attitude> many = Attitudes.find(fine, fine.centroid().plus(off), 1, 1 / displaced);
        assertThat(some).hasSize(body.ways);
        assertThat(many).hasSize(body.ways);
        for (Attitude here : some) {
            Attitude there = nearest(here, many);
            MeshDoubt doubt = MeshDoubt.of(coarse, coarse.centroid().plus(off), displaced, here);
            assertThat(doubt.lean()).isBetween(1e-4, here.turnsFreely() ? Math.PI : 0.2);
            assertThat(doubt.level()).isBetween(1e-5, 1e-3);
            assertThat(here.turnsFreely()).isEqualTo(there.turnsFreely());
            assertThat(Math.acos(Math.min(1, here.up().dot(there.up())))).isLessThanOrEqualTo(doubt.lean());
            assertThat(here.draft()).isCloseTo(there.draft(), within(doubt.level()));
            assertThat(here.freeboard()).isCloseTo(there.freeboard(), within(doubt.level()));
            assertThat(here.energy()).isCloseTo(there.energy(), within(doubt.gm()));
            assertThat(here.gmSmaller()).isCloseTo(there.gmSmaller(), within(doubt.gm()));
            assertThat(here.gmLarger()).isCloseTo(there.gmLarger(), within(doubt.gm()));
            // shares are counts of a hundred starts
            assertThat(here.share()).isCloseTo(there.share(), within(0.05));
        }
    }

    private static Attitude nearest(Attitude to, List<Attitude> among) {
        Attitude best = among.get(0);
        for (Attitude it : among) {
            best = it.up().dot(to.up()) > best.up().dot(to.up()) ? it : best;
        }
        return best;
    }

    /** ANALYTIC: a ball's draft by its cubic; loaded off its middle it rests with the load straight below that. */
    @Test
    void ballWithinTheStatedError() {
        Hull ball = Body.BALL.hull(35);
        double displaced = 0.9 * 4 * Math.PI / 3 * Math.pow(0.03, 3);
        Attitude any = Attitudes.find(ball, ball.centroid(), 1, 1 / displaced).get(0);
        MeshDoubt doubt = MeshDoubt.of(ball, ball.centroid(), displaced, any);
        assertThat(any.draft()).isCloseTo(2 * 0.03 * Draft.ballDraft(0.9), within(doubt.level()));
        Vec3 load = new Vec3(0.0003, -0.0006, 0.0006);
        Attitude one = Attitudes.find(ball, load, 1, 1 / displaced).get(0);
        MeshDoubt loaded = MeshDoubt.of(ball, load, displaced, one);
        assertThat(one.gmSmaller()).isCloseTo(load.norm(), within(loaded.gm()));
        assertThat(Math.acos(-one.up().dot(load) / load.norm())).isLessThan(loaded.lean());
        assertThat(loaded.lean()).isLessThan(0.1);
    }

    /** ANALYTIC: an exact hull has no doubt. */
    @Test
    void exactHullsHaveNone() {
        Hull cube = HullBodies.block(1, 1, 1);
        Attitude way = Attitudes.find(cube, cube.centroid(), 0.9).get(0);
        assertThat(MeshDoubt.of(cube, cube.centroid(), 0.9, way)).isEqualTo(new MeshDoubt(0, 0, 0));
    }

    /**
     * A faceted ball of 500 uneven facets, and a long body of as few: what facets make is no attitude.
     */
    @Test
    void facetsMakeNoAttitudes() {
        for (Body body : List.of(Body.BALL, Body.LONG)) {
            Hull rough = body.hull(12);
            List<Attitude> ways = Attitudes.find(rough, rough.centroid(), body.ratio);
            assertThat(ways).hasSize(1);
            assertThat(ways.get(0).turnsFreely()).isTrue();
            assertThat(ways.get(0).share()).isEqualTo(1);
        }
    }
}
