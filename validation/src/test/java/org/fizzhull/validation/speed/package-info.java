/**
 * Programs to be timed from outside, for claims that count the start of the virtual machine in. Entry: {@link
 * org.fizzhull.validation.speed.MeasureStl}. Left out: benchmarks inside one running machine.
 */
package org.fizzhull.validation.speed;
