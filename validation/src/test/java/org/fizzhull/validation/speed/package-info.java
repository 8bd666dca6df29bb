/**
 * How long the work takes. Classes called {@code ...Speed} are benchmarks inside one warm virtual machine (JMH, profile
 * {@code benchmarks}); {@code SpeedTest} calls each of them once in every build. {@link
 * org.fizzhull.validation.speed.MeasureStl} is a program to be timed from outside, for claims that count the start of the
 * virtual machine in. Left out: any assertion on a time.
 */
package org.fizzhull.validation.speed;
