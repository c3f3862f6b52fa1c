package org.drysill;

import java.lang.reflect.AnnotatedElement;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Draws the same cases for a property in every run, so that the tests of one commit pass or fail
 * alike everywhere. {@code -Dcases=N} draws the N-th lot instead, {@code -Dcases=new} one never
 * seen: to look for what nobody thought of is a job of its own, not of the run that must tell
 * whether a change broke something.
 */
public final class SameCases implements AroundPropertyHook {
  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public boolean appliesTo(Optional<AnnotatedElement> element) {
    return true;
  }

  /** Before whatever looks at the seed. */
  @Override
  public int aroundPropertyProximity() {
    return -100;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    if (context.attributes().seed().isEmpty()) {
      context
          .attributes()
          .setSeed(seed(System.getProperty("cases", "0"), context.targetMethod().toString()));
    }
    return property.execute();
  }

  static String seed(String cases, String property) {
    long lot = cases.equals("new") ? new Random().nextLong() : Long.parseLong(cases);
    return Long.toString(property.hashCode() * 1_000_003L + lot);
  }
}
