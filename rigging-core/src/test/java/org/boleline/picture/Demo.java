package org.boleline.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.boleline.json.PlanReader;
import org.boleline.plan.Plan;

/** The sites of the compare program. */
final class Demo {
  static final PictureSpec PHONE = PictureSpec.STANDARD.withSheet(390, 640);

  private Demo() {}

  static Plan plan(String name) {
    try {
      return PlanReader.read(
          Path.of(
              "../rigging-examples/compare-arrangements/src/main/resources/org/boleline/examples"
                  + "/compare/"
                  + name
                  + ".json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
