package org.drysill.report.pages;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drysill.report.brief.BriefView;
import org.drysill.report.chart.ChartText;
import org.drysill.report.view.ReportView;

/** Writes down what a template can see, from the records themselves. */
public final class ViewGuide {
  private static final Set<String> NOT_SHOWN = Set.of("toString", "hashCode");

  private ViewGuide() {}

  /** Prints the part of the guide that follows from the records. */
  public static void main(String[] arguments) {
    System.out.print(text());
  }

  static String text() {
    StringBuilder text = new StringBuilder();
    Set<Class<?>> told = new LinkedHashSet<>();
    Deque<Class<?>> open =
        new ArrayDeque<>(List.of(ReportView.class, BriefView.class, ChartText.class));
    while (!open.isEmpty()) {
      Class<?> type = open.poll();
      if (!told.add(type)) {
        continue;
      }
      if (type.isSealed()) {
        open.addAll(Arrays.asList(type.getPermittedSubclasses()));
      } else if (type.isRecord()) {
        text.append("- **").append(type.getSimpleName()).append("**: ");
        text.append(String.join(", ", shown(type, open))).append('\n');
      }
    }
    return text.toString();
  }

  private static List<String> shown(Class<?> type, Deque<Class<?>> open) {
    Set<String> names = new TreeSet<>();
    for (Method method : type.getDeclaredMethods()) {
      if (method.getParameterCount() == 0
          && Modifier.isPublic(method.getModifiers())
          && !Modifier.isStatic(method.getModifiers())
          && !method.isBridge()
          && !NOT_SHOWN.contains(method.getName())) {
        names.add("`" + method.getName() + "` " + words(method.getGenericReturnType(), open));
      }
    }
    return new ArrayList<>(names);
  }

  private static String words(Type type, Deque<Class<?>> open) {
    if (type instanceof ParameterizedType with) {
      Type[] of = with.getActualTypeArguments();
      String inner = words(of[of.length - 1], open);
      String outer = ((Class<?>) with.getRawType()).getSimpleName();
      return outer.equals("Optional") ? "(" + inner + ", may be missing)" : outer + " of " + inner;
    }
    Class<?> plain = (Class<?>) type;
    boolean ours = plain.getName().startsWith("org.drysill.report.block");
    if (ours) {
      open.add(plain);
    }
    return ours || plain.getName().startsWith("org.drysill") ? plain.getSimpleName() : kind(plain);
  }

  private static String kind(Class<?> type) {
    if (type == boolean.class || type == Boolean.class) {
      return "(true or false)";
    }
    return type == String.class
        ? "(words)"
        : type.isPrimitive() ? "(number)" : type.getSimpleName();
  }
}
