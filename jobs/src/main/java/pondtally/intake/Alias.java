package pondtally.intake;

import java.io.Serializable;

/**
 * A row of {@code aliases.csv}.
 *
 * @param row as a spreadsheet shows it
 * @param field the id's field: {@code site_id}, {@code device_id}, {@code pond_id} or {@code
 *     property_id}
 * @param id the id that means another
 */
public record Alias(int row, String field, String id) implements Serializable {}
