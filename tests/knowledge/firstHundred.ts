/** The hundred trees that are asked about most, by the project's own ranking of what is grown in pots. */
export const firstHundred: readonly string[] = [
  'pinus-thunbergii', 'pinus-densiflora', 'pinus-parviflora', 'pinus-sylvestris', 'pinus-mugo', 'pinus-nigra', 'pinus-ponderosa', 'pinus-halepensis',
  'juniperus-chinensis', 'juniperus-procumbens', 'juniperus-rigida', 'juniperus-communis', 'juniperus-sabina', 'juniperus-scopulorum',
  'juniperus-californica', 'chamaecyparis-obtusa', 'picea-glauca', 'picea-abies', 'picea-jezoensis', 'cedrus-libani', 'cedrus-atlantica',
  'larix-decidua', 'larix-kaempferi', 'larix-laricina', 'metasequoia-glyptostroboides', 'taxodium-distichum', 'ginkgo-biloba', 'taxus-baccata',
  'taxus-cuspidata', 'podocarpus-macrophyllus', 'sequoia-sempervirens', 'cryptomeria-japonica', 'acer-palmatum', 'acer-buergerianum',
  'acer-campestre', 'acer-monspessulanum', 'acer-rubrum', 'acer-tataricum-subsp-ginnala', 'ulmus-minor', 'zelkova-serrata', 'carpinus-betulus',
  'carpinus-turczaninowii', 'carpinus-laxiflora', 'fagus-sylvatica', 'fagus-crenata', 'quercus-robur', 'betula-pendula', 'liquidambar-styraciflua',
  'ilex-serrata', 'prunus-mume', 'prunus-serrulata', 'prunus-spinosa', 'malus-halliana', 'malus-toringo', 'crataegus-monogyna',
  'chaenomeles-speciosa', 'chaenomeles-japonica', 'pseudocydonia-sinensis', 'cotoneaster-horizontalis', 'wisteria-floribunda', 'wisteria-sinensis',
  'ulmus-parvifolia', 'celtis-sinensis', 'punica-granatum', 'lagerstroemia-indica', 'diospyros-rhombifolia', 'buxus-sempervirens',
  'ligustrum-sinense', 'ilex-crenata', 'gardenia-jasminoides', 'pyracantha-coccinea', 'pyracantha-angustifolia', 'olea-europaea',
  'olea-europaea-subsp-cuspidata', 'myrtus-communis', 'salvia-rosmarinus', 'pistacia-lentiscus', 'arbutus-unedo', 'quercus-suber',
  'rhododendron-indicum', 'ficus-microcarpa', 'ficus-benjamina', 'ficus-salicaria', 'ficus-rubiginosa', 'heptapleurum-arboricola',
  'ehretia-microphylla', 'serissa-japonica', 'sageretia-thea', 'bougainvillea-glabra', 'plinia-cauliflora', 'chloroleucon-tortum',
  'tamarindus-indica', 'conocarpus-erectus', 'premna-serratifolia', 'wrightia-religiosa', 'adenium-obesum', 'portulacaria-afra', 'crassula-ovata',
  'operculicarya-decaryi', 'melaleuca-citrina',
];
