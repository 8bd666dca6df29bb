/**
 * What the reader of a forecast in the bath must know: {@link org.fizzhull.forecast.notice.Notices}, and of the fizz {@link
 * org.fizzhull.forecast.notice.FizzNotices}. Not offered: an embedder reads them off the forecast.
 */
@NullMarked
package org.fizzhull.forecast.notice;

import org.jspecify.annotations.NullMarked;
