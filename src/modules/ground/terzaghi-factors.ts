import { cite } from '../sources.ts'
import { table } from '../table.ts'

/** Angle of friction in degrees, N_c, N_q, N_gamma. */
const printed = `
0  5.71  1.00  0.00
1  6.00  1.10  0.01
2  6.30  1.22  0.04
3  6.62  1.35  0.06
4  6.97  1.49  0.10
5  7.34  1.64  0.14
6  7.73  1.81  0.20
7  8.15  2.00  0.27
8  8.60  2.21  0.35
9  9.09  2.44  0.44
10  9.61  2.69  0.56
11  10.16  2.98  0.69
12  10.76  3.29  0.85
13  11.41  3.63  1.04
14  12.11  4.02  1.26
15  12.86  4.45  1.52
16  13.68  4.92  1.82
17  14.56  5.45  2.18
18  15.52  6.04  2.59
19  16.56  6.70  3.07
20  17.69  7.44  3.64
21  18.92  8.26  4.31
22  20.27  9.19  5.09
23  21.75  10.23  6.00
24  23.36  11.40  7.08
25  25.13  12.72  8.34
26  27.09  14.21  9.84
27  29.24  15.90  11.60
28  31.61  17.81  13.70
29  34.24  19.98  16.18
30  37.16  22.46  19.13
31  40.41  25.28  22.65
32  44.04  28.52  26.87
33  48.09  32.23  31.94
34  52.64  36.50  38.04
35  57.75  41.44  45.41
36  63.53  47.16  54.36
37  70.07  53.80  65.27
38  77.50  61.55  78.61
39  85.97  70.61  95.03
40  95.66  81.27  115.31
41  106.81  93.85  140.51
42  119.67  108.75  171.99
43  134.58  126.50  211.56
44  151.95  147.74  261.60
45  172.28  173.28  325.34
46  196.22  204.19  407.11
47  224.55  241.80  512.84
48  258.28  287.85  650.67
49  298.71  344.63  831.99
50  347.50  415.14  1072.80
`
  .trim()
  .split('\n')
  .map(row => row.split(/\s+/))

const keys = printed.map(([angle = '']) => angle)
const factors = (title: string, column: number, status: string) =>
  table(
    {
      title,
      source: cite('kumbhojkar', 'as reprinted in Das'),
      status,
      unit: '',
      row: { kind: 'numbers', says: 'angle of friction', keys, unit: 'deg', between: 'linear' },
    },
    printed.map(row => row[column]).join('\n'),
  )
const recalled = 'from memory of the reprint; recomputed at every angle'

/** Terzaghi's factors for general shear. */
export const terzaghiNc = factors('Factor of cohesion', 1, `${recalled}, and put right at 0, 17, 18 and 37 degrees`)
export const terzaghiNq = factors('Factor of overburden', 2, recalled)
export const terzaghiNgamma = factors('Factor of weight', 3, recalled)
