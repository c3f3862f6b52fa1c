package org.drysill.report.block;

import java.util.List;

/** One thing on a page, with what stands beside it in the margin. */
public sealed interface Block
    permits Prose,
        Subhead,
        Bullets,
        Grid,
        ChartBlock,
        Step,
        CautionBlock,
        HeatMap,
        Facts,
        Workings,
        Entries,
        Listing,
        Photos,
        Signatures {
  /** What an expert asks and others may skip. */
  List<Note> margin();

  /** The name of its macro. */
  String kind();
}
