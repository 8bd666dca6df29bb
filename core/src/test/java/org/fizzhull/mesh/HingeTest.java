package org.fizzhull.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HingeTest {
    /** Every way in which three corners of six places can stand to a facet before, held against a search edge by edge. */
    @Test
    void sharedEdgesFollowFromTheCorners() {
        int[] before = {0, 1, 2};
        for (int way = 0; way < 216; way++) {
            int[] own = {way % 6, way / 6 % 6, way / 36};
            byte code = Hinge.code(twin(own[0]), twin(own[1]), twin(own[2]));
            int expectedOwn = 0;
            int expectedBefore = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    if (own[i] == before[(j + 1) % 3] && own[(i + 1) % 3] == before[j]) {
                        expectedOwn |= 1 << i;
                        expectedBefore |= 1 << j;
                    }
                }
            }
            assertThat(Hinge.own(code)).as("facet %s", (Object) own).isEqualTo(expectedOwn);
            assertThat(Hinge.before(code)).as("facet %s", (Object) own).isEqualTo(expectedBefore);
        }
    }

    private static int twin(int place) {
        return place < 3 ? place + 1 : 0;
    }
}
