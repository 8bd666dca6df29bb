package org.fizzhull.forecast.attitude;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.fizzhull.forecast.ToldShape;
import org.fizzhull.forecast.result.FloatingAttitude;
import org.fizzhull.forecast.result.FloatingAttitude.Topping;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Loaded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY HAND: which way up is up, of directions whose cosine stands beside them. */
class LiesWordsTest {
    private static FloatingAttitude rest(Vec3 up, boolean free, Topping topping) {
        return new FloatingAttitude(
                up,
                0.03,
                0.01,
                0.9,
                0.002,
                free,
                OptionalDouble.of(1),
                FloatingAttitude.Cavity.NONE,
                topping,
                OptionalDouble.empty());
    }

    /** A direction in the x-z plane whose cosine with the listed axis is z. */
    private static String way(Shape shape, double z) {
        return LiesWords.way(shape, rest(new Vec3(Math.sqrt(1 - z * z), 0, z), false, Topping.NONE));
    }

    /** Upright above a cosine of 0.99, on its side below 0.01; 60 degrees have a cosine of one half, 120 of minus a half. */
    @ParameterizedTest
    @CsvSource({
        "1,flat side down,open side up,wide face down,lying flat,upright,its top up",
        "-1,flat side up,open side down,point down,lying flat,upright,its top down",
        "0,'tilted, 90 degrees over','tilted, 90 degrees over',on its side,on its edge,on its side,on its side",
        "0.5,'tilted, 60 degrees over','tilted, 60 degrees over','tilted, 60 degrees over','tilted, 60 degrees over',"
                + "'tilted, 60 degrees over','tilted, 60 degrees over'",
        "-0.5,'tilted, 120 degrees over','tilted, 120 degrees over','tilted, 120 degrees over',"
                + "'tilted, 120 degrees over','tilted, 120 degrees over','tilted, 120 degrees over'"
    })
    void roundBodies(double z, String dome, String bowl, String cone, String puck, String egg, String ball) {
        assertThat(way(Dome.ofDiameter(0.07), z)).isEqualTo(dome);
        assertThat(way(Bowl.ofDiameterAndWall(0.08, 0.012), z)).isEqualTo(bowl);
        assertThat(way(Cone.ofDiameterAndHeight(0.06, 0.06), z)).isEqualTo(cone);
        assertThat(way(Puck.ofDiameterAndHeight(0.07, 0.03), z)).isEqualTo(puck);
        assertThat(way(Egg.ofLengthAndDiameter(0.07, 0.05), z)).isEqualTo(egg);
        assertThat(way(Capsule.ofLengthAndDiameter(0.07, 0.04), z)).isEqualTo(egg);
        assertThat(way(Sphere.ofDiameter(0.065), z)).isEqualTo(ball);
    }

    @Test
    void aBallThatTurnsFreely() {
        assertThat(LiesWords.of(Sphere.ofDiameter(0.065), rest(new Vec3(0, 0, 1), true, Topping.NONE)))
                .isEqualTo("any way up");
    }

    @ParameterizedTest
    @CsvSource({
        "0,0,-1,its height upright",
        "1,0,0,its length upright",
        "0,-1,0,its width upright",
        "0.6,0.8,0,'tilted, a corner or an edge down'"
    })
    void blocks(double x, double y, double z, String words) {
        Shape block = Block.ofSides(0.06, 0.05, 0.03);
        assertThat(LiesWords.way(block, rest(new Vec3(x, y, z), false, Topping.NONE)))
                .isEqualTo(words);
    }

    /**
     * Of a mesh the sides of its file are named, the largest first, those whose cosine is above 0.26 (75 degrees); straight
     * above 0.99. A direction of 3, 0, 4 leans by acos(4/5), 37 degrees, from z.
     */
    @ParameterizedTest
    @CsvSource({
        "0,0,1,'as in the file, its +z side shows'",
        "0,0,-1,'upside down against the file, its -z side shows'",
        "1,0,0,'on its side, its +x side shows'",
        "0,-1,0,'on its side, its -y side shows'",
        "0.6,0,0.8,'tilted, what is between +z and +x of the file shows'",
        "0.8,-0.6,0,'tilted, what is between +x and -y of the file shows'",
        "0.48,-0.6,0.64,'tilted, what is between +z and -y and +x of the file shows'",
        "0.2,0,0.9797959,'tilted by 12 degrees, its +z side shows'",
        "0,0.9797959,-0.2,'tilted by 12 degrees, its +y side shows'"
    })
    void meshes(double x, double y, double z, String words) {
        Shape mesh = new ToldShape(Block.ofSides(0.06, 0.05, 0.03), "mesh", 1);
        assertThat(LiesWords.way(mesh, rest(new Vec3(x, y, z), false, Topping.NONE)))
                .isEqualTo(words);
    }

    /** A kind that has no words of its own is told by its listed axis. */
    @ParameterizedTest
    @CsvSource({"1,as listed", "-1,upside down", "0,on its side", "0.5,'tilted, 60 degrees over'"})
    void otherKinds(double z, String words) {
        assertThat(way(new ToldShape(Block.ofSides(0.06, 0.05, 0.03), "buoy", 1), z))
                .isEqualTo(words);
    }

    /** A topping is named where there is one alone; a body without any says nothing of it. */
    @Test
    void toppings() {
        Shape puck = Puck.ofDiameterAndHeight(0.07, 0.03);
        org.fizzhull.shape.load.Topping salt = new org.fizzhull.shape.load.Topping("salt", 0.002, 2165, 0.55);
        Loaded one = Loaded.with(puck, salt);
        Loaded two = Loaded.with(one, new org.fizzhull.shape.load.Topping("petals", 0.001, 1400, 0.3));
        Vec3 up = new Vec3(0, 0, 1);
        assertThat(LiesWords.of(one, rest(up, false, Topping.SHOWS))).isEqualTo("lying flat, the salt in sight");
        assertThat(LiesWords.of(two, rest(up, false, Topping.AT_WATER_LINE)))
                .isEqualTo("lying flat, the topping at the water line");
        assertThat(LiesWords.topping(one, rest(up, false, Topping.UNDER_WATER))).isEqualTo("the salt under water");
        assertThat(LiesWords.of(one, rest(up, false, Topping.NONE))).isEqualTo("lying flat");
        assertThat(LiesWords.topping(puck, rest(up, false, Topping.SHOWS))).isEmpty();
    }
}
