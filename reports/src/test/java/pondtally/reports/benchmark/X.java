package pondtally.reports.benchmark;
public class X { public static void main(String[] a) throws Exception {
 var t = pondtally.reports.table.TablePackage.open(java.nio.file.Path.of(a[0]));
 var e = pondtally.reports.fixture.EveryNumber.of(t);
 java.util.List<pondtally.reports.view.Sentence> all = new java.util.ArrayList<>();
 pondtally.reports.view.Summary.of(t).forEach(s -> all.addAll(s.sentences()));
 pondtally.reports.view.Grant.of(t).forEach(s -> { all.addAll(s.sentences()); s.tables().forEach(x -> x.rows().forEach(all::addAll)); });
 int n=0; for (var s : all) try { n+=e.sentence(s); } catch (Throwable x) { System.out.println(x.getMessage()); }
 System.out.println(n+" figures");
 for (int i=1;i<a.length;i++) if (a[i].endsWith(".xlsx")) try { System.out.println(pondtally.reports.workbook.EveryCell.ofProgram(t, java.nio.file.Path.of(a[i]))+" cells"); } catch (Throwable x) { System.out.println(x.getMessage().substring(0, Math.min(3000,x.getMessage().length()))); }
}}
